/** Which foods bring the net carbs of a serving; each figure opens what it comes from. */
import { Fragment } from 'preact';
import type { Adaptation } from '../../../../engine/model.ts';
import { foodWord } from '../../words/food-words.ts';
import { portionWord } from '../../words/portion.ts';
import { say } from '../../words/say.ts';
import { type Block, carbBlocks } from '../carb-blocks.ts';
import { amount, NET_CARBS } from '../format.ts';
import {
  FigureButton,
  type FigureOf,
  type Opened,
  type Side,
  SourcePanel,
  useOpened,
} from './figure-sources.tsx';

const blockName = ({ key, name, foodId }: Block): string => {
  if (key === 'small') return say('smallerAmounts');
  return foodId === null ? name : foodWord(foodId, name);
};

function Figure({ block, side, opened }: { block: Block; side: Side; opened: Opened }) {
  if (block[side] === 0) return <td class={`figure ${side}`}>0</td>;
  const figure: FigureOf = { side, row: NET_CARBS, keys: block.keys };
  const when = say(side === 'before' ? 'loafBefore' : 'loafNow');
  return (
    <td class={`figure ${side}`}>
      <FigureButton opened={opened} figure={figure} name={`${blockName(block)}, ${when}`}>
        {amount(block[side])}
      </FigureButton>
    </td>
  );
}

export function CarbSources({ adaptation }: { adaptation: Adaptation }) {
  const opened = useOpened();
  const blocks = carbBlocks(adaptation);
  return (
    <table class="nutrients carb-sources">
      <caption>{say('carbsFrom', portionWord(adaptation))}</caption>
      <thead>
        <tr>
          <th scope="col">
            <span class="hidden">{say('food')}</span>
          </th>
          <th scope="col" class="figure">
            {say('loafNow')}
          </th>
          <th scope="col" class="figure">
            {say('loafBefore')}
          </th>
        </tr>
      </thead>
      <tbody>
        {blocks.map((block) => (
          <Fragment key={block.key}>
            <tr>
              <th scope="row">{blockName(block)}</th>
              <Figure block={block} side="after" opened={opened} />
              <Figure block={block} side="before" opened={opened} />
            </tr>
            {opened.figure?.keys?.join() === block.keys.join() && (
              <tr class="sources-row">
                <td colSpan={3}>
                  <SourcePanel opened={opened} adaptation={adaptation} />
                </td>
              </tr>
            )}
          </Fragment>
        ))}
      </tbody>
    </table>
  );
}
