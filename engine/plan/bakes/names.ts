/** Figures that the failure table's conditions and texts may name. Percent is of the flour base unless said. */
export const FIGURE_NAMES = [
  'hydrationPct',
  /** Water for what the flours hold, against the original: 100 is as before. */
  'wetnessPct',
  'reserveG',
  'glutenPct',
  'glutenMinPct',
  'glutenMaxPct',
  'glutenOfMinPct',
  'glutenOfMaxPct',
  'starchPct',
  'binderPct',
  'binderCapPct',
  'binderOfCapPct',
  'psylliumPct',
  'anyGum',
  'saltPct',
  'saltG',
  'yeastPct',
  'leaveningPct',
  'sodaPct',
  'sugarPct',
  'sugarLeftPct',
  'browningPct',
  'fatPct',
  'addedFatPct',
  'nutPct',
  'coconutPct',
  'sunflowerPct',
  'insolubleFibrePct',
  'dustyPct',
  'thirstyPct',
  'inulinPct',
  'flavourPct',
  'eggPct',
  'oneEggPct',
  'eggPowderPct',
  'proteinPowderPct',
  'allulosePct',
  'erythritolPct',
  /** Of the mass of all sweeteners that have bulk. */
  'alluloseSharePct',
  'erythritolSharePct',
  /** Of the sweetness. */
  'intenseSharePct',
  /** Against the original. */
  'sweetnessPct',
  'freezingPct',
  /** Of the whole dish. */
  'alluloseOfDishPct',
  'erythritolOfDishPct',
  'coolingOfDishPct',
  'gumOfDishPct',
  'thickenerOfDishPct',
  'wateryPct',
  /** Of a serving. */
  'doseG',
  'doseCapG',
  'doseOfCapPct',
  'doubtfulFibreG',
  'addedFibreG',
  'polyolG',
  'netG',
  'countedG',
  /** As the baker measured. */
  'innerC',
  'cooledHours',
] as const;
export type FigureName = (typeof FIGURE_NAMES)[number];

/** Figures of one bake; null is not known, or means nothing in this dish. */
export type BakeFigures = Record<FigureName, number | null>;
