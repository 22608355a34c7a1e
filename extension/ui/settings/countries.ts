/**
 * What labels and meters say where the user lives. Salt and energy: Regulation (EU) 1169/2011 (and the UK's
 * retained copy), 21 CFR 101.9, Canada's Food and Drug Regulations B.01.401, FSANZ Standard 1.2.8.
 * Units of blood glucose and of oven heat: common practice, no source.
 */
import type { NetCarbRule } from '../../../engine/model.ts';
import type { Preferences } from '../../store/prefs.ts';
import type { MessageKey } from '../words/say.ts';

export interface Country {
  id: Preferences['country'];
  word: MessageKey;
  region: NetCarbRule['region'];
  energy: Preferences['energy'];
  sodium: Preferences['sodium'];
}

const country = (
  id: Country['id'],
  word: MessageKey,
  region: Country['region'],
  energy: Country['energy'],
  sodium: Country['sodium'],
): Country => ({ id, word, region, energy, sodium });

export const COUNTRIES: readonly Country[] = [
  country('us', 'countryUs', 'us', 'kcal', 'sodium'),
  country('ca', 'countryCa', 'us', 'kcal', 'sodium'),
  country('uk', 'countryUk', 'eu', 'kcal', 'salt'),
  country('de', 'countryDe', 'eu', 'kcal', 'salt'),
  country('eu', 'countryEu', 'eu', 'kcal', 'salt'),
  country('au', 'countryAu', 'eu', 'kJ', 'sodium'),
  country('other', 'countryOther', 'us', 'kcal', 'sodium'),
];

/** The preferences that follow from a country; each can be changed by itself afterwards. */
export function preferencesIn(
  id: Country['id'],
  { rule }: Pick<Preferences, 'rule'>,
): Partial<Preferences> {
  const found = COUNTRIES.find((one) => one.id === id);
  if (!found) return {};
  const { region, energy, sodium } = found;
  return { country: id, rule: { ...rule, region }, energy, sodium };
}
