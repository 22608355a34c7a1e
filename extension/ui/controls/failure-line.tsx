/** What went wrong, in words that say what to do; nothing while all is well. */
export function FailureLine({ text }: { text: string | false | null | undefined }) {
  if (!text) return null;
  return (
    <p role="alert" class="failure">
      {text}
    </p>
  );
}
