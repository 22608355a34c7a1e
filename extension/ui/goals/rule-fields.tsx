import { useId } from 'preact/hooks';
import type { NetCarbRule } from '../../../engine/model.ts';

const REGIONS: readonly [NetCarbRule['region'], string][] = [
  ['us', 'US: fibre is taken off the stated carbohydrate'],
  ['eu', 'EU: stated carbohydrate is without fibre'],
];

const POLYOLS: readonly [NetCarbRule['polyols'], string][] = [
  ['half', 'count half of each, erythritol not at all'],
  ['half_over_5g', 'count half, but only above 5 g a serving; else in full'],
  ['energy', 'count by the energy each gives'],
  ['none', 'count in full'],
  ['all', 'do not count'],
];

interface Props {
  rule: NetCarbRule;
  onRule(rule: NetCarbRule): void;
}

/** How net carbs are counted. */
export function RuleFields({ rule, onRule }: Props) {
  const id = useId();
  return (
    <>
      <div class="field">
        <label for={`${id}-region`}>Net carb rule</label>
        <select
          id={`${id}-region`}
          value={rule.region}
          onChange={({ currentTarget }) => {
            const picked = REGIONS.find(([region]) => region === currentTarget.value);
            if (picked) onRule({ ...rule, region: picked[0] });
          }}
        >
          {REGIONS.map(([region, text]) => (
            <option key={region} value={region}>
              {text}
            </option>
          ))}
        </select>
      </div>
      <div class="field">
        <label for={`${id}-polyols`}>Sugar alcohols</label>
        <select
          id={`${id}-polyols`}
          value={rule.polyols}
          onChange={({ currentTarget }) => {
            const picked = POLYOLS.find(([policy]) => policy === currentTarget.value);
            if (picked) onRule({ ...rule, polyols: picked[0] });
          }}
        >
          {POLYOLS.map(([policy, text]) => (
            <option key={policy} value={policy}>
              {text}
            </option>
          ))}
        </select>
      </div>
    </>
  );
}
