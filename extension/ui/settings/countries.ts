/**
 * What labels, meters, ovens and scales say where the user lives. Salt and energy: Regulation (EU) 1169/2011 (and
 * the UK's retained copy), 21 CFR 101.9, Canada's Food and Drug Regulations B.01.401, FSANZ Standard 1.2.8.
 * Glucose: mmol/L in the UK, Canada and Australia, mg/dL in the United States, both in Europe by country (in
 * Germany the west has mg/dL, the east mmol/L), as their diabetes associations write it; from memory.
 * Ovens: °F in the United States and, by common practice, in Canada; from memory. Amounts: cups and ounces in the
 * United States, grams elsewhere but in Canada, where pages have both; common practice, no source.
 */
import type { NetCarbRule } from '../../../engine/model.ts';
import type { Preferences } from '../../store/prefs.ts';
import type { MessageKey } from '../words/say.ts';

type Units = Pick<Preferences, 'energy' | 'sodium' | 'meter' | 'heat' | 'amounts'>;

export interface Country extends Units {
  id: Preferences['country'];
  word: MessageKey;
  region: NetCarbRule['region'];
}

const AMERICAN = { energy: 'kcal', sodium: 'sodium', heat: 'F' } as const;
const EUROPEAN = { energy: 'kcal', sodium: 'salt', heat: 'C', amounts: 'metric' } as const;

export const COUNTRIES: readonly Country[] = [
  { id: 'us', word: 'countryUs', region: 'us', ...AMERICAN, meter: 'mg/dL', amounts: 'us' },
  { id: 'ca', word: 'countryCa', region: 'us', ...AMERICAN, meter: 'mmol/L', amounts: 'page' },
  { id: 'uk', word: 'countryUk', region: 'eu', ...EUROPEAN, meter: 'mmol/L' },
  { id: 'de', word: 'countryDe', region: 'eu', ...EUROPEAN, meter: 'mg/dL' },
  { id: 'eu', word: 'countryEu', region: 'eu', ...EUROPEAN, meter: 'mg/dL' },
  {
    id: 'au',
    word: 'countryAu',
    region: 'eu',
    energy: 'kJ',
    sodium: 'sodium',
    heat: 'C',
    amounts: 'metric',
    meter: 'mmol/L',
  },
  {
    id: 'other',
    word: 'countryOther',
    region: 'us',
    energy: 'kcal',
    sodium: 'sodium',
    heat: 'C',
    amounts: 'page',
    meter: 'mg/dL',
  },
];

/** What the user can have chosen apart from any country. */
const BY_THEMSELVES = ['meter', 'heat', 'amounts'] as const;

/** Of these, what still stands as the last country had it; a band of readings is in a unit that was chosen. */
function notChosen(now: Preferences, last: Country, next: Country): Partial<Preferences> {
  const free = BY_THEMSELVES.filter(
    (key) => now[key] === last[key] && (key !== 'meter' || now.meterBand === null),
  );
  return Object.fromEntries(free.map((key) => [key, next[key]]));
}

/** The preferences that follow from a country; each can be changed by itself afterwards. */
export function preferencesIn(id: Country['id'], now: Preferences): Partial<Preferences> {
  const next = COUNTRIES.find((one) => one.id === id);
  const last = COUNTRIES.find((one) => one.id === now.country);
  if (!next || !last) return {};
  const { region, energy, sodium } = next;
  return {
    country: id,
    rule: { ...now.rule, region },
    energy,
    sodium,
    ...notChosen(now, last, next),
  };
}
