/** How net carbs are counted. */
import { useId } from 'preact/hooks';
import type { NetCarbRule } from '../../../engine/model.ts';
import { type MessageKey, say } from '../words/say.ts';

const REGIONS: readonly [NetCarbRule['region'], MessageKey][] = [
  ['us', 'ruleUs'],
  ['eu', 'ruleEu'],
];

const POLYOLS: readonly [NetCarbRule['polyols'], MessageKey][] = [
  ['half', 'polyolsHalf'],
  ['half_over_5g', 'polyolsHalfOver5'],
  ['energy', 'polyolsEnergy'],
  ['none', 'polyolsFull'],
  ['all', 'polyolsNone'],
];

interface Props {
  rule: NetCarbRule;
  onRule(rule: NetCarbRule): void;
}

export function RuleFields({ rule, onRule }: Props) {
  const id = useId();
  return (
    <>
      <div class="field">
        <label for={`${id}-region`}>{say('netCarbRule')}</label>
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
              {say(text)}
            </option>
          ))}
        </select>
      </div>
      <div class="field">
        <label for={`${id}-polyols`}>{say('sugarAlcohols')}</label>
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
              {say(text)}
            </option>
          ))}
        </select>
      </div>
    </>
  );
}
