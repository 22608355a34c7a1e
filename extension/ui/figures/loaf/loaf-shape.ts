/**
 * The outlines a loaf is drawn with, as SVG paths. Proportions are own choice; all follow from the
 * height, so that a loaf of any size keeps its shape.
 */

export interface Box {
  /** Left and right end. */
  from: number;
  to: number;
  /** The board it lies on, and how high it stands; y grows downwards. */
  floor: number;
  high: number;
}

/** At most one decimal: drawings stay small. */
const n = (value: number): string => String(Math.round(value * 10) / 10);

/** How far a rounded heel reaches into the loaf. */
const heelOf = ({ from, to, high }: Box): number => Math.min(0.95 * high, 0.42 * (to - from));

function leftHeel({ from, floor, high }: Box, heel: number): string {
  const top = floor - high;
  const small = Math.min(0.3 * high, heel * 0.32);
  return (
    `M${n(from + small)} ${n(floor)}` +
    `C${n(from + small * 0.27)} ${n(floor)} ${n(from)} ${n(top + 0.86 * high)} ${n(from)} ${n(top + 0.64 * high)}` +
    `C${n(from)} ${n(top + 0.26 * high)} ${n(from + 0.42 * heel)} ${n(top + 0.04 * high)} ${n(from + heel)} ${n(top)}`
  );
}

function rightHeel({ to, floor, high }: Box, heel: number): string {
  const top = floor - high;
  const small = Math.min(0.3 * high, heel * 0.32);
  return (
    `C${n(to - 0.42 * heel)} ${n(top + 0.04 * high)} ${n(to)} ${n(top + 0.26 * high)} ${n(to)} ${n(top + 0.64 * high)}` +
    `C${n(to)} ${n(top + 0.86 * high)} ${n(to - small * 0.27)} ${n(floor)} ${n(to - small)} ${n(floor)}`
  );
}

/** A whole loaf, its middle slightly risen. */
export function wholeLoaf(box: Box): string {
  const heel = heelOf(box);
  const top = box.floor - box.high;
  const middle = (box.from + box.to) / 2;
  const rise = `Q${n(middle)} ${n(top - 0.045 * box.high)} ${n(box.to - heel)} ${n(top)}`;
  return `${leftHeel(box, heel)}${rise}${rightHeel(box, heel)}Z`;
}

/** The left piece of a cut loaf: a heel and a straight end. */
export function leftPiece(box: Box): string {
  const top = box.floor - box.high;
  return `${leftHeel(box, Math.min(heelOf(box), box.to - box.from))}L${n(box.to)} ${n(top)}V${n(box.floor)}Z`;
}

/** The right piece of a cut loaf. */
export function rightPiece(box: Box): string {
  const top = box.floor - box.high;
  const heel = Math.min(0.95 * box.high, box.to - box.from);
  return `M${n(box.from)} ${n(box.floor)}V${n(top)}L${n(box.to - heel)} ${n(top)}${rightHeel(box, heel)}Z`;
}

/** The heel alone, open to the left: how far a loaf may reach. */
export function mayReach(box: Box): string {
  const heel = heelOf({ ...box, from: box.to - 3 * box.high });
  return `M${n(box.to - heel)} ${n(box.floor - box.high)}${rightHeel(box, heel)}H${n(box.to - heel)}`;
}

/** The crumb that a cut shows. */
export function face({ to, floor, high }: Box): string {
  const top = floor - high;
  const wide = 0.21 * high;
  return (
    `M${n(to)} ${n(top)}C${n(to + wide)} ${n(top)} ${n(to + wide)} ${n(floor - 0.02 * high)} ${n(to)} ${n(floor)}` +
    `C${n(to - wide)} ${n(floor - 0.02 * high)} ${n(to - wide)} ${n(top)} ${n(to)} ${n(top)}Z`
  );
}

export interface Hole {
  x: number;
  y: number;
  rx: number;
  ry: number;
}

/** Holes of the crumb, always the same five. */
export function holes({ to, floor, high }: Box): Hole[] {
  const top = floor - high;
  const at = (x: number, y: number, r: number): Hole => ({
    x: to + x * high,
    y: top + y * high,
    rx: r * high,
    ry: 1.55 * r * high,
  });
  return [
    at(-0.03, 0.28, 0.05),
    at(0.05, 0.5, 0.045),
    at(-0.05, 0.68, 0.04),
    at(0.04, 0.76, 0.03),
    at(0.03, 0.18, 0.026),
  ];
}

/** Width of one score against the height. */
const SCORE = 0.5;

/** Left ends of the scores along a piece: as many as fit, in its middle. */
export function scoreStarts({ from, to, high }: Box, apart: number): number[] {
  const room = to - from - 0.5 * high;
  const count = Math.floor((room - SCORE * high) / (apart * high)) + 1;
  if (room < SCORE * high || count < 1) return [];
  const span = (count - 1) * apart * high + SCORE * high;
  const first = from + (to - from - span) / 2;
  return Array.from({ length: count }, (_, at) => first + at * apart * high);
}

/** One score, leaning right: the lens, and its left edge alone. */
export function score(start: number, { floor, high }: Box): { lens: string; ear: string } {
  const foot = floor - 0.34 * high;
  const ear = `M${n(start)} ${n(foot)}q${n(0.09 * high)} ${n(-0.42 * high)} ${n(SCORE * high)} ${n(-0.56 * high)}`;
  return {
    lens: `${ear}q${n(-0.1 * high)} ${n(0.42 * high)} ${n(-SCORE * high)} ${n(0.56 * high)}Z`,
    ear,
  };
}

/** A slanted block from one length to another, in the angle of the scores. */
export function slantedBlock(start: number, end: number, { floor, high }: Box): string {
  const lean = 0.72 * high;
  const top = floor - 1.1 * high;
  return `M${n(start - lean / 2)} ${n(floor)}L${n(start + lean / 2)} ${n(top)}H${n(end + lean / 2)}L${n(end - lean / 2)} ${n(floor)}Z`;
}

/** The line where a slanted block begins. */
export function seam(start: number, { floor, high }: Box): string {
  const lean = 0.72 * high;
  return `M${n(start - lean / 2)} ${n(floor)}L${n(start + lean / 2)} ${n(floor - 1.1 * high)}`;
}
