import { useDebouncedValue } from '@mantine/hooks';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { contract } from '../../../shared/contract/index.ts';
import { orpc } from '../../api/client.ts';
import { inputErrors } from '../../parts/input-schema.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { Answer } from './answer.tsx';
import classes from './finish-room.module.css';
import { isAmountGiven, type MixFields, mixInput, planInput } from './mix-fields.ts';
import { MixPlanView } from './mix-plan-view.tsx';

const typingMs = 200;

/** What would be poured and issued, reckoned anew as it is typed. */
export function MixPlan({ fields }: { fields: MixFields }) {
  const [asked] = useDebouncedValue(JSON.stringify(planInput(fields)), typingMs);
  const input = planInput(fields);
  const isReady =
    isAmountGiven(fields) &&
    Object.keys(inputErrors(contract.finish.mix, mixInput(fields))).length === 0;
  const isSettled = asked === JSON.stringify(input);
  const plan = useQuery({
    ...orpc.finish.planMix.queryOptions({ input }),
    enabled: isReady && isSettled,
    placeholderData: keepPreviousData,
  });
  if (!isReady) {
    return (
      <p className={classes.quiet}>Give the amount and the temperature: what to pour shows here.</p>
    );
  }
  if (plan.error !== null)
    return <ErrorNote error={plan.error} onAgain={() => void plan.refetch()} />;
  return plan.data === undefined ? (
    <BusyNote>Reckoning ...</BusyNote>
  ) : (
    <Answer isBusy={!isSettled || plan.isPlaceholderData}>
      <MixPlanView plan={plan.data} />
    </Answer>
  );
}
