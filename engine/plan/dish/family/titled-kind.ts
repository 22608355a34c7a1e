/** Kinds of dish that the title settles, when what is in it does not speak against it: `data/titled-kinds.json`. */
import type { Family } from '../../../model.ts';
import rows from '../../data/titled-kinds.json' with { type: 'json' };
import { mentionsAny } from '../word-search.ts';

/** What a kind needs to be believed, by the masses of the dish. */
interface Evidence {
  /** Share of flour in the whole mass. */
  flourShare: number;
  leavening: boolean;
  yeast: boolean;
  /** Share of the whole mass by class. */
  share: ReadonlyMap<string, number>;
}

const of = ({ share }: Evidence, classes: readonly string[]): number =>
  classes.reduce((sum, one) => sum + (share.get(one) ?? 0), 0);

const SUGARS = ['dry-sugars', 'syrups', 'condensed-milks', 'sweeteners'];
const CREAMS = [
  'liquids',
  'milks',
  'light-creams',
  'fats',
  'eggs',
  'milk-concentrates',
  'condensed-milks',
  'yogurts',
];

const CRUMBS = ['sweet-biscuits', 'chocolate-biscuits', 'crumb-crusts'];

/** Own choice: what tells a sweet from what only bears its name. */
const NEEDS: Readonly<Record<string, (e: Evidence) => boolean>> = {
  sugar: (e) => of(e, SUGARS) >= 0.2 && e.flourShare < 0.1,
  cream: (e) => of(e, CREAMS) >= 0.25 && of(e, SUGARS) >= 0.02 && e.flourShare < 0.12,
  'sweet without dough': (e) => of(e, SUGARS) >= 0.01 && e.flourShare < 0.05,
  crumbs: (e) => of(e, CRUMBS) >= 0.05 && of(e, CREAMS) >= 0.2 && e.flourShare < 0.03,
  'plain dough': (e) => e.flourShare >= 0.15 && !e.leavening && !e.yeast,
  'no dough': (e) => e.flourShare < 0.05,
};

interface Row {
  kind: string;
  family: Family;
  title: readonly string[];
  unless?: readonly string[];
  method?: readonly string[];
  needs: string;
}

/** The kind a title names, with its family, or null when it names none that fits. */
export function titledKind(
  title: string,
  method: string,
  evidence: Evidence,
): { kind: string; family: Family } | null {
  const row = (rows as readonly Row[]).find(
    (one) =>
      mentionsAny(one.title, title) &&
      !mentionsAny(one.unless, title) &&
      (one.method === undefined || mentionsAny(one.method, method)) &&
      NEEDS[one.needs]?.(evidence) === true,
  );
  return row ?? null;
}
