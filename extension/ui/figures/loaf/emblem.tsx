/** The sign of the extension: a loaf with its last slice cut off. */

export function Emblem({ size = 26 }: { size?: number }) {
  return (
    <svg class="emblem" width={size} height={size} viewBox="0 0 24 24" aria-hidden="true">
      <path
        class="flat-crust"
        d="M3.4 18.5C1.5 18.5.7 17 .7 14.8C.7 9.7 4.1 6.9 8.8 6.9Q12 6.65 15.7 6.8V18.5Z"
      />
      <path
        class="flat-crust"
        d="M18.4 7C21.6 7.7 23.3 10.6 23.3 14.5C23.3 17.2 22.5 18.5 20.9 18.5H18.4Z"
      />
      <path
        class="score"
        d="M3.7 14.9Q4 10.4 8.5 8.7Q8.5 12.9 3.7 14.9ZM9.5 14.9Q9.8 10.4 14.3 8.7Q14.3 12.9 9.5 14.9Z"
      />
      <path class="board-narrow" d="M.5 20.7H23.5" />
    </svg>
  );
}
