/** The verdict drawn: the dough it was, the loaf it is, both cut at the budget. */

import { useId } from 'preact/hooks';
import { useWidth } from '../../hooks/use-width.ts';
import { say } from '../../words/say.ts';
import { digitsOf, gramsWords, short } from '../format.ts';
import { groupsShown, type LoafFigures, type LoafGroup } from './loaf-figures.ts';
import { Board, Knife, KnifeLine, Pieces } from './loaf-parts.tsx';
import { type Scene, sceneOf } from './loaf-scene.ts';
import { mayReach, wholeLoaf } from './loaf-shape.ts';

/** Baselines of the labels, px: over the dough, and below the middle of what they name. */
const KNIFE_LABEL = 13;
const BASELINE = 5;

const GROUP_WORDS: Record<LoafGroup, 'groupFlour' | 'groupSugar' | 'groupPlant' | 'groupRest'> = {
  flour: 'groupFlour',
  sugar: 'groupSugar',
  plant: 'groupPlant',
  rest: 'groupRest',
};

/** Left of the bars stand the words for them, each beside its own. */
const NAMES_WIDE = 52;
/** Width of a letter of small text, px, on the safe side. */
const LETTER = 7;

/** What the dotted heel says, as long as there is room for; '' where there is none. */
export function reachWords(highG: number, room: number, untold = false): string {
  const high = digitsOf(Math.ceil(highG - 1e-9), 0);
  const fitting = untold
    ? [say('loafUntold')]
    : [say('loafMayBe', high), say('loafMayBeShort', high)];
  return fitting.find((text) => text.length * LETTER <= room) ?? '';
}

/** Where the words of the dotted heel begin: clear of it, and of the line of the budget beyond it. */
function reachLabel({ highG }: LoafFigures, { reach, knife, wide }: Scene, untold: boolean) {
  if (reach === null) return null;
  const before = { at: reach + 8, text: reachWords(highG, knife - reach - 16, untold) };
  if (before.text !== '') return before;
  const at = Math.max(reach + 8, knife + 12);
  return { at, text: reachWords(highG, wide - at, untold) };
}

interface LabelsProps {
  figures: LoafFigures;
  scene: Scene;
  untold: boolean;
}

function Labels({ figures, scene, untold }: LabelsProps) {
  const { wide, knife, labelLeft, high } = scene;
  const budget = gramsWords(figures.budgetG);
  const reach = reachLabel(figures, scene, untold);
  return (
    <>
      <text
        x={labelLeft ? knife - 10 : knife + 11}
        y={KNIFE_LABEL}
        text-anchor={labelLeft ? 'end' : 'start'}
      >
        {say(wide < 290 ? 'loafBudgetShort' : 'loafBudget', budget)}
      </text>
      <text class="soft" x={-NAMES_WIDE} y={scene.doughMiddle + BASELINE}>
        {say('loafBefore')}
      </text>
      <text class="now" x={-NAMES_WIDE} y={scene.loafMiddle + BASELINE}>
        {say('loafNow')}
      </text>
      {reach && reach.text !== '' && (
        <text class="soft" x={reach.at} y={high - 20}>
          {reach.text}
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
  /** What is not counted may take it anywhere: no upper end is named. */
  untold?: boolean;
}

export function VerdictLoaf({ figures, groups = false, untold = false }: Props) {
  const { ref, width } = useWidth(320);
  const full = sceneOf(figures, width - NAMES_WIDE);
  const plain = (baked: Scene['loaf']) => ({ ...baked, blocks: [] });
  const scene = groups ? full : { ...full, dough: plain(full.dough), loaf: plain(full.loaf) };
  const { high } = scene;
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
        width={width}
        height={high}
        viewBox={`0 0 ${width} ${high}`}
      >
        <g transform={`translate(${NAMES_WIDE} 0)`}>
          <Pieces baked={scene.dough} look="dough" />
          {!scene.over && <Knife at={scene.knife} floor={scene.doughFloor} />}
          {!scene.over && <KnifeLine at={scene.knife} from={scene.doughFloor} to={high - 7} />}
          <Reach scene={scene} />
          <Pieces baked={scene.loaf} look="baked" />
          {scene.over && <Knife at={scene.knife} floor={high - 7} />}
          <Labels figures={figures} scene={scene} untold={untold} />
        </g>
        <Board wide={width} at={high - 5.5} />
      </svg>
      {groups && <GroupKey figures={figures} />}
    </div>
  );
}
