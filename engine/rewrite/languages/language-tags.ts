/** Languages that have words of their own, besides English, and what they have in common. */

export const LANGUAGES = ['da', 'de', 'es', 'fr', 'it', 'nb', 'nl', 'pt', 'sv'] as const;
export type Language = (typeof LANGUAGES)[number];

/** Norwegian pages say 'no' or 'nn' as well. */
const SAME_AS: Readonly<Record<string, Language>> = { no: 'nb', nn: 'nb' };

/** The two letters of a tag; English for tags that name no language, such as 'und'. */
export function baseOf(language: string | null): string {
  const base = (language ?? '').toLowerCase().split(/[-_]/)[0] ?? '';
  return /^[a-z]{2}$/.test(base) ? base : 'en';
}

/** The language of a BCP 47 tag; null for English and for languages without words. */
export function languageOfTag(language: string | null): Language | null {
  const base = baseOf(language);
  return LANGUAGES.find((tag) => tag === (SAME_AS[base] ?? base)) ?? null;
}

/** Decimals with a comma, as all these languages write them. */
export const decimals = (text: string): string => text.replace(/(\d)\.(\d)/g, '$1,$2');
