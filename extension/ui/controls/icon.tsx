/** Line drawings for what can be pressed; always beside a word or with a name for readers. */

const PATHS = {
  recipe:
    'M4 19.5C2.8 19.5 2 18 2 16C2 11 5.5 8 10 8H14C18.5 8 22 11 22 16C22 18 21.2 19.5 20 19.5ZM7.5 14.5L10 11.5M13 14.5L15.5 11.5',
  stove:
    'M4 10H20V17Q20 20 17 20H7Q4 20 4 17ZM1.5 12H4M20 12H22.5M9 6.5Q8 5 9 3.5M14 6.5Q13 5 14 3.5',
  buy: 'M3 10H21L19 20H5ZM7.5 10L10.5 4M16.5 10L13.5 4M9 13.5V16.5M15 13.5V16.5',
  bakes: 'M3 4H21V20H3ZM3 8.5H21M7 17C7 14 9 12.5 12 12.5S17 14 17 17ZM6.5 6.2H7M10.5 6.2H11',
  cupboard:
    'M7 3H17V6H7ZM7.5 6Q5 8 5 11V18.5Q5 21 7.5 21H16.5Q19 21 19 18.5V11Q19 8 16.5 6M9 12.5H15V16.5H9Z',
  kept: 'M3 20V12Q3 6 9 6H15Q21 6 21 12V20ZM3 13H21M10 16.5H14',
  settings:
    'M9 13V21M9 13Q5.5 11.5 5.5 7.5T9 3Q12.5 3.5 12.5 7.5T9 13M17 3V21M15 3V7.5Q15 9.5 17 9.5T19 7.5V3',
  more: 'M5 12H5.01M12 12H12.01M19 12H19.01',
  undo: 'M4 9H14.5Q20 9 20 14T14.5 19H10M8 5L4 9L8 13',
  redo: 'M20 9H9.5Q4 9 4 14T9.5 19H14M16 5L20 9L16 13',
  close: 'M6 6L18 18M18 6L6 18',
  down: 'M5 9L12 16L19 9',
  right: 'M9 5L16 12L9 19',
  warning: 'M12 3L22 20H2ZM12 10V14.5M12 17.2V17.3',
  search: 'M10.5 4A6.5 6.5 0 1 1 10.49 4ZM15.5 15.5L21 21',
  clock: 'M12 4.5A8 8 0 1 1 11.99 4.5ZM12 8V12.5L15 14.5M9.5 2H14.5',
  tick: 'M5 12.5L10 17.5L19.5 6.5',
} as const;

export type IconName = keyof typeof PATHS;

export function Icon({ name }: { name: IconName }) {
  return (
    <svg class={`icon icon-${name}`} width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
      <path d={PATHS[name]} />
    </svg>
  );
}
