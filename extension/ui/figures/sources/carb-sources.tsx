/** Which foods bring the net carbs of a serving; each figure opens what it comes from. */
import type { Adaptation } from '../../../../engine/model.ts';
import { foodWord } from '../../words/food-words.ts';
import { portionWord } from '../../words/portion.ts';
import { say } from '../../words/say.ts';
import { type Block, carbBlocks } from '../carb-blocks.ts';
import { amount, NET_CARBS } from '../format.ts';
import { GiveHeads, GiveRow } from '../gives/give-row.tsx';
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

interface FigureProps {
  block: Block;
  side: Side;
  opened: Opened;
}

function Figure({ block, side, opened }: FigureProps) {
  if (block[side] === 0) return side === 'before' ? say('newHere') : '0';
  const figure: FigureOf = { side, row: NET_CARBS, keys: block.keys };
  const when = say(side === 'before' ? 'loafBefore' : 'loafNow');
  return (
    <FigureButton opened={opened} figure={figure} name={`${blockName(block)}, ${when}`}>
      {amount(block[side])}
    </FigureButton>
  );
}

export function CarbSources({ adaptation }: { adaptation: Adaptation }) {
  const opened = useOpened();
  const blocks = carbBlocks(adaptation);
  return (
    <section class="carb-sources gives-group">
      <h3>{say('carbsFrom', portionWord(adaptation))}</h3>
      <ul class="give-list">
        <GiveHeads ranges={false} />
        {blocks.map((block) => (
          <GiveRow
            key={block.key}
            now={<Figure block={block} side="after" opened={opened} />}
            unit="g"
            name={blockName(block)}
            was={<Figure block={block} side="before" opened={opened} />}
            changed={block.before > 0 && amount(block.before) !== amount(block.after)}
          >
            {opened.figure?.keys?.join() === block.keys.join() && (
              <SourcePanel opened={opened} adaptation={adaptation} />
            )}
          </GiveRow>
        ))}
      </ul>
    </section>
  );
}
