/** Language tags as pages write them. */

/** A BCP 47 tag made from what a page says ('en_US', 'EN-us'), or null when it is none. */
export function languageTag(stated: string | null): string | null {
  const found = /^([a-z]{2,3})(?:[-_]([a-z]{2}|[A-Z]{4}|\d{3}))?(?:[-_.].*)?$/i.exec(
    (stated ?? '').trim(),
  );
  if (!found) return null;
  const primary = (found[1] ?? '').toLowerCase();
  return found[2] ? `${primary}-${found[2].toUpperCase()}` : primary;
}
