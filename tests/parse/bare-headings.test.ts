/** Headings among the lines that say by no mark that they are one. */
import { describe, expect, it } from 'vitest';
import { withBareHeadings } from '../../engine/parse/bare-headings.ts';
import { parseLine } from '../../engine/parse/index.ts';

const headings = (lines: readonly string[], steps: readonly string[]): string[] =>
  withBareHeadings(
    lines.map((line) => parseLine(line)),
    steps,
  )
    .filter(({ kind }) => kind === 'heading')
    .map(({ text }) => text);

const SLAW = ['2 lb pork', 'Apple Slaw', '2 cups shredded cabbage', '1 green apple'];
const MAYO = ['Chipotle Mayo', '1/2 cup mayonnaise', '1 chipotle in adobo'];

describe('a line without an amount', () => {
  it('titles the lines behind it where the method makes it', () => {
    const steps = ['For the slaw, toss it all.', 'For the chipotle mayo, blend the rest.'];
    expect(headings([...SLAW, ...MAYO], steps)).toEqual(['Apple Slaw', 'Chipotle Mayo']);
  });

  it.each(['To serve', 'Zum Servieren', 'Außerdem', 'Pour servir'])(
    "'%s' by itself is no food, and leaves the group of what stands behind it",
    (heading) => {
      const lines = ['2 lb pork', heading, '10 buns'];
      expect(headings(lines, [])).toEqual([heading]);
      const last = withBareHeadings(
        lines.map((line) => parseLine(line)),
        [],
      ).at(-1);
      expect(last?.group).toBe(null);
      expect(headings(['2 lb pork', heading], [])).toEqual([]);
    },
  );

  it.each([
    [['Soy sauce', '2 eggs', '1 cup rice'], ['Make the sauce and serve.']],
    [['Barbecue sauce', '4 buns', '2 onions'], ['Brush with barbecue sauce.']],
    [['Apple slaw', 'Parsley', '2 onions'], ['For the slaw, toss it all.']],
    [['2 eggs', 'Apple slaw'], ['For the slaw, toss it all.']],
    [['Tortilla chips', '2 eggs', '1 onion'], ['Serve with tortilla chips.']],
    [['Apple slaw, to serve', '2 eggs', '1 onion'], ['For the slaw, toss it all.']],
    [SLAW, ['Serve with slaw.']],
  ])('is a food else: %j', (lines, steps) => {
    expect(headings(lines, steps)).toEqual([]);
  });
});

describe('a heading', () => {
  const CAKE = ['200 g sugar', '2 eggs', 'For the frosting', '100 g butter', '80 g sugar'];
  const groups = (lines: readonly string[]): (string | null)[] =>
    withBareHeadings(
      lines.map((line) => parseLine(line)),
      [],
    ).map(({ group }) => group);

  it('that says what the lines are for needs no colon and no method', () => {
    expect(headings(CAKE, [])).toEqual(['For the frosting']);
    expect(headings(['300 g Mehl', 'Für die Füllung', '1 kg Äpfel', '50 g Zucker'], [])).toEqual([
      'Für die Füllung',
    ]);
  });

  it('is the group of the lines behind it', () => {
    const frosting = 'For the frosting';
    expect(groups(CAKE)).toEqual([null, null, null, frosting, frosting]);
  });
});
