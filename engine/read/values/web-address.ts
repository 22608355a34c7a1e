/** Addresses as pages write them, made absolute. */

/** An absolute http(s) address, or null. */
export function webAddress(value: string | null, base: string | null): string | null {
  if (value === null || value.trim() === '' || value.length > 4_000) return null;
  try {
    const url = base ? new URL(value.trim(), base) : new URL(value.trim());
    return url.protocol === 'http:' || url.protocol === 'https:' ? url.href : null;
  } catch {
    return null;
  }
}
