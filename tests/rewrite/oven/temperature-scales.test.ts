import { describe, expect, it } from 'vitest';
import { celsius, withAllScales } from '../../../engine/rewrite/oven/temperature-scales.ts';

describe('temperatures', () => {
  it.each([
    ['Bake at 230 C.', 'Bake at 230 C (445 °F).'],
    ['Bake at 180°C for 20 minutes.', 'Bake at 180°C (355 °F) for 20 minutes.'],
    ['Preheat oven to 375 F.', 'Preheat oven to 375 F (190 °C).'],
    ['Heat to 350 degrees Fahrenheit', 'Heat to 350 degrees Fahrenheit (175 °C)'],
    ['Heat the oven to 350 degrees.', 'Heat the oven to 350 degrees F (175 °C).'],
    ['Bring to 35-38 °C', 'Bring to 35-38 °C (95-100 °F)'],
    ['until 165°F inside', 'until 165°F (74 °C) inside'],
    ['to the hard crack stage (300°F).', 'to the hard crack stage (300°F / 150 °C).'],
    ['in a slow oven (300 degrees).', 'in a slow oven (300 degrees F / 150 °C).'],
    ['Bake (in a tin) at 400°F (it is hot).', 'Bake (in a tin) at 400°F (205 °C) (it is hot).'],
    ['Heat the oven to 400℉.', 'Heat the oven to 400℉ (205 °C).'],
    ['Heat oven to 220C/fan 200C/gas 7.', 'Heat oven to 220C (430 °F)/fan 200C/gas 7.'],
    ['Bake at 190℃ until set', 'Bake at 190℃ (375 °F) until set'],
    [
      'It is done between 205 and 209°F in the middle',
      'It is done between 205 and 209°F (96-98 °C) in the middle',
    ],
  ])('%s', (text, expected) => {
    expect(withAllScales(text)).toBe(expected);
  });

  it.each([
    'Bake at 180 °C (350 °F).',
    'Bake at 350°F/175°C for 20 minutes.',
    'Bake at 350℉ (175℃) for 20 minutes.',
    'Add 2 c flour and 100 cups of water',
    'Rotate the tray by 180 degrees.',
    'Use 250 ml cream and 200 g cheese',
  ])('leaves alone: %s', (text) => {
    expect(withAllScales(text)).toBe(text);
  });

  it('is stable: a second pass changes nothing', () => {
    const once = withAllScales('Heat to 230 C, then lower to 200 C for 10 minutes.');
    expect(withAllScales(once)).toBe(once);
    expect(once).toContain('230 C (445 °F)');
    expect(once).toContain('200 C (390 °F)');
  });

  it('writes both scales', () => {
    expect(celsius(43)).toBe('43 °C (109 °F)');
    expect(celsius(98, 99)).toBe('98-99 °C (208-210 °F)');
  });
});
