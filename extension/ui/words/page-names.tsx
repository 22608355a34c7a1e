/** Names as a page has them, one after the other: each in the page's language and direction, what joins them in the screen's. */
import { listWith } from './say.ts';

interface Props {
  names: readonly string[];
  language: string | null;
}

export const PageNames = ({ names, language }: Props) => (
  <>
    {listWith(names, (name, at) => (
      <span key={at} lang={language ?? undefined} dir="auto">
        {name}
      </span>
    ))}
  </>
);
