/** Ways to the parts of a long place, for those who go by keyboard; seen when they have the focus. */

interface Props {
  /** Each part's element id and its name. */
  parts: readonly (readonly [id: string, name: string])[];
  label: string;
}

function jump(id: string): void {
  const part = document.getElementById(id);
  if (!part) return;
  part.tabIndex = -1;
  part.focus();
}

export function Jumps({ parts, label }: Props) {
  return (
    <nav class="jumps" aria-label={label}>
      {parts.map(([id, name]) => (
        <button key={id} type="button" class="skip" onClick={() => jump(id)}>
          {name}
        </button>
      ))}
    </nav>
  );
}
