/** A cue: handling that new ingredients call for, when it applies, and where it goes. */
import { DISHES, DOUGHS } from '../../model.ts';

export interface Cue {
  id: string;
  /** Families of dishes, or `dishes` and `doughs` for all of a kind. */
  families: string[];
  /** Tags and ids of foods, one of which the plan adds. */
  added?: string[];
  /** Tags and ids of foods, none of which the plan adds. */
  notAdded?: string[];
  /** Tags and ids of foods, one of which is in the result. */
  present?: string[];
  /** Tags and ids of foods of the original, one of which is cut or left out. */
  cut?: string[];
  /** Its text goes unsaid where the plan asks for less of the pot's liquid already. */
  saysLessLiquid?: boolean;
  /** A third at most of what is cut is left. */
  keepsNone?: boolean;
  /** What is cut is a third less or more, and nothing stands in for it. */
  shrinks?: boolean;
  /** An icing or glaze is made by half. */
  halved?: boolean;
  /** Whether flour or starch that thickens is to stay beside the gum, or none. */
  starchStays?: boolean;
  severalFlours?: boolean;
  /** Only when new flours are at least this share (0..1) of the flours: a little changes no handling. */
  fromShare?: number;
  yeast?: boolean;
  /** The method says it already, or the opposite. */
  unless?: string;
  /** The same where nothing is left of what is cut. */
  unlessNone?: string;
  /** What a swap may say of its food's handling that this cue says too. */
  covers?: string;
  /** Of the cues of one group only the first speaks, so that none contradicts another. */
  group?: 'core' | 'cooling' | 'rest' | 'flours' | 'roots' | 'pasta';
  /**
   * `use`: before the step that first takes what it is about; `before` and `after` the step that fits
   * `where`; `within` it, behind the sentence that fits.
   */
  place: 'use' | 'before' | 'after' | 'within';
  /** For `use`: right before the sentence that takes it, within its step. */
  inside?: boolean;
  /** In brackets behind the name of what it is for, in the step that takes it. */
  bracket?: boolean;
  /** Only where the step that takes what it is about says this, or does not. */
  taken?: string;
  takenNot?: string;
  where?: string;
  /** Of the steps that fit `where`, one that says this goes before the others. */
  prefers?: string;
  /** The first step that fits, for `after` and `within`; else the last. */
  first?: boolean;
  /** For `within`: before the sentence that fits. */
  ahead?: boolean;
  /** Only beside a sentence that cooks what it is about, by its name. */
  naming?: boolean;
  /** The time stated in the sentence it stands behind is put right there, and only the rest is said. */
  retimes?: boolean;
  /** Goes to the part's start (`before`) or end when no step matches `where`. */
  anyway?: boolean;
  /** Only beside a step that takes what it is about. */
  here?: boolean;
  /** Only in the very step that takes what it is about. */
  inStep?: boolean;
  /** Only once the dough is mixed. */
  dough?: boolean;
  /** Only from the step on that takes the yeast. */
  risen?: boolean;
  /** Only for a title or method that speaks of this. */
  ifSaid?: string;
  /** Only for a dish whose title says this. */
  titled?: string;
  /** Not for a dish whose title says this. */
  notTitled?: string;
  /** Corrects the phrase of the last step (or of `all`) that says otherwise, instead of a step of its own. */
  amends?: { step: string; phrase: string; to: string; all?: boolean; notWithMeat?: boolean };
  /** Says its text also when it has corrected a step. */
  too?: boolean;
  /** Makes the thing that a swap without handling of its own brings in. */
  makes?: boolean;
  /** Not for foods that go into a thing made first, such as a crust. */
  notMade?: boolean;
  /** Tells the handling of the foods it is for, in place of what their swaps say. */
  handles?: boolean;
  /** Lowers the oven in the method; its text is for methods that state no temperature. */
  oven?: boolean;
  /** Only where flour and water can, or cannot, stand together before the rest goes in. */
  autolyse?: boolean;
  /** Only for what is baked, not for pieces that are fried or boiled. */
  baked?: boolean;
  /** Only for a dough that is kneaded, not for a batter. */
  kneaded?: boolean;
  /** Only for bakes of at least this many minutes. */
  bakeFrom?: number;
  /** Only its first sentence goes where it is placed; the rest is told once the liquid is in. */
  afterwards?: boolean;
  /** Its temperature is that of a syrup: sugar melted dry is gone by by colour alone. */
  syrup?: boolean;
  text: string;
  why: string;
  source: string;
}

/** Short words for many families in the data. */
const GROUPS: Readonly<Record<string, readonly string[]>> = { dishes: DISHES, doughs: DOUGHS };

/** Whether a cue or warning is for dishes of a family. */
export const isFor = (families: readonly string[], family: string): boolean =>
  families.some((one) => one === family || GROUPS[one]?.includes(family) === true);
