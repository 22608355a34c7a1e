/** The verdict drawn: the dough it was, the loaf it is, both cut at the budget. */

import { useId } from 'preact/hooks';
import { useWidth } from '../../hooks/use-width.ts';
import { say } from '../../words/say.ts';
import { gramsWords, short } from '../format.ts';
import { groupsShown, type LoafFigures, type LoafGroup } from './loaf-figures.ts';
import { Board, Knife, Pieces } from './loaf-parts.tsx';
import { type Scene, sceneOf } from './loaf-scene.ts';
import { mayReach, wholeLoaf } from './loaf-shape.ts';

const GROUP_WORDS: Record<LoafGroup, 'groupFlour' | 'groupSugar' | 'groupPlant' | 'groupRest'> = {
  flour: 'groupFlour',
  sugar: 'groupSugar',
  plant: 'groupPlant',
  rest: 'groupRest',
};

function Labels({ figures, scene }: { figures: LoafFigures; scene: Scene }) {
  const { wide, knife, labelLeft, reach, loaf, high } = scene;
  const budget = gramsWords(figures.budgetG);
  const end = loaf.pieces.at(-1)?.box.to ?? 2;
  const clear = Math.max(reach ?? end, knife + 4, end) + 14;
  const fits = clear < wide - 80;
  return (
    <>
      <text
        x={labelLeft ? knife - 10 : knife + 11}
        y="14"
        text-anchor={labelLeft ? 'end' : 'start'}
      >
        {say(wide < 340 ? 'loafBudgetShort' : 'loafBudget', budget)}
      </text>
      {wide - knife > 150 && (
        <text class="soft" x={wide} y="14" text-anchor="end">
          {say('loafBefore')}
        </text>
      )}
      {fits && (
        <text class="now" x={clear} y={high - 24}>
          {say('loafNow')}
        </text>
      )}
    </>
  );
}

/** How far the loaf may reach, dotted, beyond its end only. */
function Reach({ scene }: { scene: Scene }) {
  const id = useId();
  const { reach, loaf, wide, high } = scene;
  const last = loaf.pieces.at(-1)?.box;
  if (reach === null || !last) return null;
  return (
    <>
      <clipPath id={id}>
        <rect x={last.to + 1.5} y="0" width={wide} height={high} />
      </clipPath>
      <path class="may-reach" clip-path={`url(#${id})`} d={mayReach({ ...last, to: reach })} />
    </>
  );
}

function GroupKey({ figures }: { figures: LoafFigures }) {
  const box = { from: 1, to: 25, floor: 15, high: 14 };
  return (
    <p class="loaf-key">
      {groupsShown(figures).map((group) => (
        <span key={group}>
          <svg viewBox="0 0 26 16" width="26" height="16" aria-hidden="true">
            <path class="flat-crust" d={wholeLoaf(box)} />
            {group !== 'flour' && <path fill={`url(#baked-${group})`} d={wholeLoaf(box)} />}
          </svg>
          {say(GROUP_WORDS[group])}
        </span>
      ))}
    </p>
  );
}

interface Props {
  figures: LoafFigures;
  /** Blocks of ingredient groups and their key; the popup goes without. */
  groups?: boolean;
}

export function VerdictLoaf({ figures, groups = false }: Props) {
  const { ref, width } = useWidth(320);
  const full = sceneOf(figures, width);
  const plain = (baked: Scene['loaf']) => ({ ...baked, blocks: [] });
  const scene = groups ? full : { ...full, dough: plain(full.dough), loaf: plain(full.loaf) };
  const { wide, high } = scene;
  return (
    <div ref={ref} class="verdict-loaf">
      <svg
        class="loaf"
        role="img"
        aria-label={say(
          'loafAlt',
          short(figures.before.grams),
          short(figures.after.grams),
          short(figures.budgetG),
        )}
        width={wide}
        height={high}
        viewBox={`0 0 ${wide} ${high}`}
      >
        <Pieces baked={scene.dough} look="dough" />
        <Board wide={wide} at={high - 5.5} />
        <Reach scene={scene} />
        <Pieces baked={scene.loaf} look="baked" />
        <Knife at={scene.knife} floor={high - 7} />
        <Labels figures={figures} scene={scene} />
      </svg>
      {groups && <GroupKey figures={figures} />}
    </div>
  );
}
