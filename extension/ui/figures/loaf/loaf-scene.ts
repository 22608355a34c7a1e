/** Where everything of a loaf's picture stands, for the width at hand. */
import {
  groupsShown,
  LOAF_GROUPS,
  type LoafFigures,
  type LoafGroup,
  type LoafSide,
} from './loaf-figures.ts';
import type { Box } from './loaf-shape.ts';

export interface Piece {
  box: Box;
  kind: 'whole' | 'left' | 'right';
}

export interface Baked {
  pieces: Piece[];
  /** Lengths at which the groups begin; empty where the loaf is too low to show them. */
  blocks: { group: LoafGroup; from: number; to: number }[];
}

export interface Scene {
  wide: number;
  high: number;
  dough: Baked;
  loaf: Baked;
  /** Right end of the likely range, or null when it would not be seen. */
  reach: number | null;
  /** Where the budget cuts. */
  knife: number;
  /** The loaf itself goes past it; otherwise the knife ends with the dough. */
  over: boolean;
  /** Floor of the dough, and the middles of dough and loaf. */
  doughFloor: number;
  doughMiddle: number;
  loafMiddle: number;
  /** The label of the knife stands left of it when there is no room on the right. */
  labelLeft: boolean;
}

/** Ends stand this far from the edge of the picture, for their outline. */
const EDGE = 2;
/** Room above the dough for the knife's handle and the labels. */
const HEAD = 21;
/** The double stripe under the loaf. */
const FOOT = 8;
/** Between dough and loaf. */
const GAP = 6;
/** A shorter dotted heel than this is left out, px. */
const LEAST_REACH = 3;
/** Lower loaves show no groups. */
const LEAST_HIGH = 22;
/** Share of the width beyond which the knife's label stands on its left. */
const LABEL_TURNS = 0.47;

/** Heights of dough and loaf by the width of the picture. */
function heightsFor(wide: number): { dough: number; loaf: number } {
  if (wide >= 560) return { dough: 38, loaf: 56 };
  return { dough: 19, loaf: 31 };
}

/** A piece shorter than this cannot be drawn and is not cut off. */
const LEAST_PIECE = 4;

/** One length of loaf, cut at the knife when it is longer; the right piece stands apart. */
export function cutAt(length: number, knife: number, floor: number, high: number): Piece[] {
  const to = EDGE + length;
  const box = { from: EDGE, to, floor, high };
  if (length < LEAST_PIECE) return [];
  const apart = 0.3 * high;
  if (to <= knife + 0.5 || to - knife < apart + LEAST_PIECE) return [{ box, kind: 'whole' }];
  if (knife - EDGE < LEAST_PIECE) return [{ box, kind: 'whole' }];
  return [
    { box: { ...box, to: knife }, kind: 'left' },
    { box: { ...box, from: knife + apart }, kind: 'right' },
  ];
}

/** Groups that have no place in the key are left plain. */
function blocksOf(
  side: LoafSide,
  shown: readonly LoafGroup[],
  scale: number,
  high: number,
): Baked['blocks'] {
  if (high < LEAST_HIGH) return [];
  let at = EDGE;
  return LOAF_GROUPS.flatMap((group) => {
    const from = at;
    at += side.groups[group] * scale;
    return at - from < 1 || !shown.includes(group) ? [] : [{ group, from, to: at }];
  });
}

/** A verdict's picture: the dough it was above, the loaf it is below, the knife through both. */
export function sceneOf(figures: LoafFigures, wide: number): Scene {
  const { before, after, highG, budgetG } = figures;
  const heights = heightsFor(wide);
  const shown = groupsShown(figures);
  const full = Math.max(
    before.grams,
    after.grams,
    Math.min(highG, 1.5 * after.grams),
    budgetG,
    0.1,
  );
  const scale = (wide - 2 * EDGE) / (budgetG >= full ? budgetG * 1.06 : full);
  const knife = EDGE + budgetG * scale;
  const doughFloor = HEAD + heights.dough;
  const floor = doughFloor + GAP + heights.loaf;
  const reach = EDGE + Math.min(highG * scale, wide - 2 * EDGE);
  const end = EDGE + after.grams * scale;
  return {
    wide,
    high: floor + FOOT,
    dough: {
      pieces: cutAt(before.grams * scale, knife, doughFloor, heights.dough),
      blocks: blocksOf(before, shown, scale, heights.dough),
    },
    loaf: {
      pieces: cutAt(after.grams * scale, knife, floor, heights.loaf),
      blocks: blocksOf(after, shown, scale, heights.loaf),
    },
    reach: reach - end < LEAST_REACH ? null : reach,
    knife,
    over: end > knife + 0.5,
    doughFloor,
    doughMiddle: doughFloor - heights.dough / 2,
    loafMiddle: floor - heights.loaf / 2,
    labelLeft: knife > LABEL_TURNS * wide,
  };
}
