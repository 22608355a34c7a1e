/** Words of a data file: comma-parted lines, since the script that runs in pages has to stay small. */

export const listed = (lines: readonly string[]): string[] => lines.join(', ').split(', ');
