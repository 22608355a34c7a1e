/** Reasons in one run of text, each in the language it is said in. */
import { engineLang } from '../../words/engine-language.ts';
import type { Reason } from './doubtful-lines.ts';

export function ReasonWords({ reasons }: { reasons: readonly Reason[] }) {
  return (
    <span>
      {reasons.map(({ text, byEngine }, at) => (
        <span key={text} lang={byEngine ? engineLang() : undefined}>
          {at > 0 && ' '}
          {text}
        </span>
      ))}
    </span>
  );
}
