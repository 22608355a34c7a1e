/** What the figures rest on, by which rules they are made, and what is not known. */
import { foodTable } from '../../../engine/index.ts';
import type { Source } from '../../../engine/model.ts';
import { locale, type MessageKey, say } from '../words/say.ts';

const KINDS: readonly (readonly [kinds: readonly Source['kind'][], word: MessageKey])[] = [
  [['SR', 'FF'], 'foodsFromUsda'],
  [['calculated'], 'foodsCalculated'],
  [['published', 'label'], 'foodsPublished'],
  [['memory', 'practice'], 'foodsFromMemory'],
];

/** Built-in foods by the kind of their source, as the table itself says. */
function bySource(): { word: MessageKey; count: number }[] {
  const { foods } = foodTable();
  return KINDS.map(([kinds, word]) => ({
    word,
    count: foods.filter(({ source }) => kinds.includes(source.kind)).length,
  })).filter(({ count }) => count > 0);
}

const PARTS = [
  ['fromLines', 'fromLinesHow'],
  ['whatNetCarbs', 'whatNetCarbsHow'],
  ['whyRanges', 'whyRangesHow'],
  ['whatIsChanged', 'whatIsChangedHow'],
] as const satisfies readonly (readonly [MessageKey, MessageKey])[];

const UNKNOWN = [
  'unknownAnswer',
  'unknownTaken',
  'unknownBrand',
  'unknownLeft',
  'unknownBaked',
] as const satisfies readonly MessageKey[];

const LAWS = ['sourceUsda', 'sourceCfr', 'sourceEuLaw', 'sourceResearch'] as const;

function Points({ words }: { words: readonly MessageKey[] }) {
  return (
    <ul class="points">
      {words.map((word) => (
        <li key={word}>{say(word)}</li>
      ))}
    </ul>
  );
}

function Foods() {
  const count = new Intl.NumberFormat(locale());
  return (
    <section>
      <h2>{say('fromTables')}</h2>
      <p>{say('fromTablesHow')}</p>
      <ul class="points">
        {bySource().map((one) => (
          <li key={one.word}>{say(one.word, count.format(one.count))}</li>
        ))}
      </ul>
    </section>
  );
}

export function FiguresMade() {
  const [lines, ...rules] = PARTS;
  return (
    <section class="place about">
      <h1>{say('figuresMade')}</h1>
      <p>{say('figuresMadeLead')}</p>
      <section>
        <h2>{say(lines[0])}</h2>
        <p>{say(lines[1])}</p>
      </section>
      <Foods />
      {rules.map(([title, text]) => (
        <section key={title}>
          <h2>{say(title)}</h2>
          <p>{say(text)}</p>
        </section>
      ))}
      <section>
        <h2>{say('whatIsUnknown')}</h2>
        <Points words={UNKNOWN} />
      </section>
      <section>
        <h2>{say('whatNotFor')}</h2>
        <p>{say('whatNotForHow')}</p>
      </section>
      <section>
        <h2>{say('sourcesUsed')}</h2>
        <Points words={LAWS} />
      </section>
    </section>
  );
}
