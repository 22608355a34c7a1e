/**
 * What the engine can say in other languages than English, of which it has many words: read in with the first page
 * that is drawn in such a language.
 */
import { languageOf, locale } from './say.ts';

type EngineWords = Pick<
  typeof import('../../../engine/match/languages/shown-names.ts'),
  'shownName'
> &
  Pick<typeof import('../../../engine/rewrite/languages/told-screens.ts'), 'toldOnScreen'>;

let words: EngineWords | null = null;

async function readIn(): Promise<EngineWords> {
  const [{ shownName }, { toldOnScreen }] = await Promise.all([
    import('../../../engine/match/languages/shown-names.ts'),
    import('../../../engine/rewrite/languages/told-screens.ts'),
  ]);
  return { shownName, toldOnScreen };
}

/** Reads them in where the language that is spoken needs them; never rejects, as English can be said without. */
export async function learnEngineWords(): Promise<void> {
  if (languageOf(locale()) !== 'en') words ??= await readIn().catch(() => null);
}

/** Null until they are learned, and as long as English is spoken. */
export const engineWords = (): EngineWords | null => (languageOf(locale()) === 'en' ? null : words);
