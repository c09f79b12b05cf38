/** Every rule of the advice, with what it is for: so that nothing is advised that cannot be read about. */
import { rules } from '../../../apiary/rules.ts';

export function RuleList() {
  return (
    <ul>
      {rules.map((rule) => (
        <li key={rule.key}>{rule.about}</li>
      ))}
    </ul>
  );
}
