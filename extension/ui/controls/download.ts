/** Hands a text to the user as a file, without any permission. */
export const downloadText = (text: string, name: string, type: string): void =>
  downloadBlob(new Blob([text], { type }), name);

/** The same for what is no text. */
export function downloadBlob(blob: Blob, name: string): void {
  const url = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The click only starts the download; the address must outlive it.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** A file name from a recipe's title: letters, digits and dashes. */
export function fileName(title: string, ending: string): string {
  const stem = title
    .normalize('NFKC')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  // By characters, not code units: half a character is not a name every system takes.
  const short = [...stem].slice(0, 60).join('');
  return `${short || 'recipe'}.${ending}`;
}
