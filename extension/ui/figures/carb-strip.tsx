import { Fragment } from 'preact';
import type { Adaptation } from '../../../engine/model.ts';
import {
  FigureButton,
  type FigureOf,
  type Opened,
  type Side,
  SourcePanel,
  useOpened,
} from './figure-sources.tsx';
import { amount, NET_CARBS, short } from './format.ts';
import { type Block, GROUP_NAMES, type Strip, stripOf } from './strip-segments.ts';

const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(3)}%`;

/** A narrower block would only be its own border. */
const SLIVER = 0.004;

/** Share of the strip's width from which a block has room for its letter. */
const ROOM_FOR_LETTER = 0.045;

function Bar({ strip, which }: { strip: Strip; which: 'before' | 'after' }) {
  const shown = strip.blocks.filter((block) => block[which] / strip.fullG >= SLIVER);
  return (
    <div class="strip-bar">
      {shown.map((block) => (
        <div
          key={block.key}
          class={`strip-block fill-${block.group}`}
          style={{ width: percent(block[which], strip.fullG) }}
        >
          {block[which] / strip.fullG >= ROOM_FOR_LETTER && (
            <span class="strip-letter">{block.letter}</span>
          )}
        </div>
      ))}
    </div>
  );
}

function KeyRow({ block, opened }: { block: Block; opened: Opened }) {
  const figure = (side: Side): FigureOf => ({ side, row: NET_CARBS, keys: block.keys });
  return (
    <tr>
      <th scope="row">
        <span class={`swatch fill-${block.group}`} title={GROUP_NAMES[block.group]} />
        <span class="key-letter">{block.letter}</span> {block.name}
      </th>
      {(['before', 'after'] as const).map((side) => (
        <td key={side} class="figure">
          {block[side] === 0 ? (
            '0'
          ) : (
            <FigureButton opened={opened} figure={figure(side)} name={`${block.name} ${side}`}>
              {amount(block[side])}
            </FigureButton>
          )}
        </td>
      ))}
    </tr>
  );
}

/** Two bars on one scale: each block is an ingredient's net carbs in a serving. */
export function CarbStrip({ adaptation }: { adaptation: Adaptation }) {
  const strip = stripOf(adaptation);
  const opened = useOpened();
  const at = percent(strip.budgetG, strip.fullG);
  return (
    <section class="strip" aria-labelledby="strip-title">
      <h2 id="strip-title">Where the net carbs come from</h2>
      <div class="strip-plot" aria-hidden="true">
        <div class="strip-names">
          <span>Before</span>
          <span>After</span>
        </div>
        <div class="strip-bars">
          <Bar strip={strip} which="before" />
          <Bar strip={strip} which="after" />
          <div class="strip-budget" style={{ left: at }}>
            <span
              class={
                strip.budgetG / strip.fullG > 0.6 ? 'strip-mark strip-mark-left' : 'strip-mark'
              }
            >
              budget {short(strip.budgetG)} g
            </span>
          </div>
        </div>
      </div>
      <table class="plain strip-key">
        <caption class="hidden">
          Net carbs of a serving by ingredient, in grams. Before {amount(strip.beforeG)}, after{' '}
          {amount(strip.afterG)}, budget {short(strip.budgetG)}.
        </caption>
        <thead>
          <tr>
            <th scope="col">Ingredient, net carbs in g</th>
            <th scope="col" class="figure">
              Before
            </th>
            <th scope="col" class="figure">
              After
            </th>
          </tr>
        </thead>
        <tbody>
          {strip.blocks.map((block) => (
            <Fragment key={block.key}>
              <KeyRow block={block} opened={opened} />
              {opened.figure?.keys?.join() === block.keys.join() && (
                <tr class="sources-row">
                  <td colSpan={3}>
                    <SourcePanel opened={opened} servings={adaptation.after.servings} />
                  </td>
                </tr>
              )}
            </Fragment>
          ))}
        </tbody>
      </table>
    </section>
  );
}
