import { describe, expect, it } from 'vitest';
import { DEFAULT_PREFERENCES, type Preferences } from '../../../extension/store/prefs.ts';
import { COUNTRIES, preferencesIn } from '../../../extension/ui/settings/countries.ts';

const in_ = (id: Preferences['country'], now: Preferences = DEFAULT_PREFERENCES): Preferences => ({
  ...now,
  ...preferencesIn(id, now),
});

describe('a country sets what was not chosen', () => {
  it.each([
    ['us', 'mg/dL', 'F', 'us', 'sodium'],
    ['ca', 'mmol/L', 'F', 'page', 'sodium'],
    ['uk', 'mmol/L', 'C', 'metric', 'salt'],
    ['de', 'mg/dL', 'C', 'metric', 'salt'],
    ['au', 'mmol/L', 'C', 'metric', 'sodium'],
  ] as const)('%s', (id, meter, heat, amounts, sodium) => {
    expect(in_(id)).toMatchObject({ country: id, meter, heat, amounts, sodium });
  });

  it('as the country before had it, however often it is changed', () => {
    for (const { id } of COUNTRIES)
      for (const { id: then } of COUNTRIES) expect(in_(then, in_(id))).toEqual(in_(then));
  });

  it('and leaves what was', () => {
    const mine = { ...DEFAULT_PREFERENCES, meter: 'mmol/L', heat: 'F', amounts: 'metric' } as const;
    expect(in_('de', mine)).toMatchObject({ meter: 'mmol/L', heat: 'F', amounts: 'metric' });
    expect(in_('us', in_('de', mine))).toMatchObject({ meter: 'mmol/L' });
  });

  it('and leaves the unit in which a band was typed', () => {
    const mine = { ...DEFAULT_PREFERENCES, meterBand: { low: 80, high: 160 } };
    expect(in_('uk', mine)).toMatchObject({ meter: 'mg/dL', heat: 'C' });
  });
});
