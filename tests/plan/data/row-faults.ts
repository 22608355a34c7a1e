/** Says in a sentence, with file and row, what is wrong with a row of the planner's tables. */
import type * as z from 'zod';

/** 'cap: too big' -> 'its "cap" ...'; zod's own words, with the field in front. */
const sentence = (issue: z.core.$ZodIssue): string => {
  const field = issue.path.length > 0 ? `its "${issue.path.join('.')}"` : 'it';
  if (issue.code === 'unrecognized_keys')
    return `${field} has a field that is not known: ${issue.keys.join(', ')}`;
  return `${field} is wrong: ${issue.message.charAt(0).toLowerCase()}${issue.message.slice(1)}`;
};

const nameOf = (row: unknown): string => {
  const { id, class: cls } = (row ?? {}) as { id?: unknown; class?: unknown };
  const name = id ?? cls;
  return typeof name === 'string' ? ` (${name})` : '';
};

/** One sentence for each fault; empty when every row is well formed. */
export function rowFaults(file: string, rows: readonly unknown[], schema: z.ZodType): string[] {
  return rows.flatMap((row, at) => {
    const { error } = schema.safeParse(row);
    return (error?.issues ?? []).map(
      (issue) => `${file}, row ${at + 1}${nameOf(row)}: ${sentence(issue)}.`,
    );
  });
}

/** One sentence for each name in a row that no table knows. */
export function unknownNames(
  file: string,
  rows: readonly { id: string; names: readonly string[] }[],
  known: (name: string) => boolean,
  what: string,
): string[] {
  return rows.flatMap(({ id, names }, at) =>
    names
      .filter((name) => !known(name))
      .map((name) => `${file}, row ${at + 1} (${id}): there is no ${what} "${name}".`),
  );
}
