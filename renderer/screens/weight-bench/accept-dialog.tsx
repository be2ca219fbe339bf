import { Textarea } from '@mantine/core';
import { useState } from 'react';
import { limbs } from '../../../shared/bows.ts';
import { decimal } from '../../../shared/measure.ts';
import type { MethodAnswer, Reckoned } from '../../../shared/plan-answer.ts';
import type { PlanInput } from '../../../shared/plan-input.ts';
import type { PlanStart } from '../../../shared/plan-record.ts';
import { planMethodLabels } from '../../../shared/weight-plan.ts';
import { api } from '../../api/client.ts';
import { Dialog } from '../../parts/dialog.tsx';
import { Facts } from '../../parts/facts.tsx';
import { FormBox } from '../../parts/form-box.tsx';
import { Mark } from '../../parts/mark.tsx';
import { useOrderCommand } from '../orders/use-order-command.ts';
import { offLines, tillerText } from './method-table.ts';
import classes from './weight-bench.module.css';

export interface Chosen {
  start: PlanStart;
  /** What the answer was reckoned from. */
  input: PlanInput;
  plan: MethodAnswer;
  drop: Reckoned['drop'];
}

interface AcceptDialogProps {
  chosen: Chosen;
  onClose: () => void;
  onAccepted: (version: number) => void;
}

const shortest = 3;

function factsOf({ plan, input }: Chosen): (readonly [string, string])[] {
  const { drawIn, targetLbf, weightLbf } = input.wish;
  const [low, high] = plan.afterFinishing.bandLbf;
  const at = `@ ${decimal(drawIn, 4)}"`;
  return [
    ['Weight', `${decimal(weightLbf)} lb now, target ${decimal(targetLbf)} lb ${at}`],
    ['Comes off', limbs.flatMap((limb) => offLines(limb, plan[limb])).join('; ')],
    ['Stop at', `${plan.stopAtLbf.toFixed(1)} lb ${at}`],
    [
      'Forecast',
      `${plan.afterFinishing.weightLbf.toFixed(1)} lb ${at} when finished, 80 % between ${low.toFixed(1)} and ${high.toFixed(1)}`,
    ],
    ['Tiller', `${tillerText(plan.tiller.afterIn)}, now ${tillerText(plan.tiller.nowIn)}`],
    ['Sanding', input.wish.sanding],
  ];
}

/** Freezes a way as the plan of the order. A big drop wants a reason. */
export function AcceptDialog({ chosen, onClose, onAccepted }: AcceptDialogProps) {
  const { start, input, plan, drop } = chosen;
  const [because, setBecause] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.plans.accept, ({ version }) => onAccepted(version));
  const { orderId, rowVersion, orderNumber } = start.about;
  const needsReason = drop.level === 'confirm';
  const isMissing = needsReason && because.trim().length < shortest;
  const title = `Accept ${planMethodLabels[plan.method].toLowerCase()} for ${orderNumber ?? 'this order'}`;
  const accept = () => {
    setTried(true);
    if (isMissing || orderId === null || rowVersion === null) return;
    void command.run({
      orderId,
      rowVersion,
      input,
      method: plan.method,
      geometryId: start.geometry?.id ?? null,
      readingId: start.reading?.id ?? null,
      confirmedBecause: needsReason ? because.trim() : '',
    });
  };
  return (
    <Dialog onClose={onClose} title={title} size="lg">
      <FormBox
        title={title}
        plain
        hideTitle
        submitLabel="Accept this plan"
        command={command}
        onCancel={onClose}
        onSubmit={accept}
      >
        <Facts facts={factsOf(chosen)} />
        {Object.values(command.details).map((text) =>
          text === command.error ? null : (
            <p key={text} className={classes.error}>
              {text}
            </p>
          ),
        )}
        {needsReason ? (
          <>
            <Mark kind="attention">{drop.sentence ?? 'This is a big drop.'}</Mark>
            <Textarea
              label="Why is so big a drop right for this bow?"
              required
              maxLength={400}
              value={because}
              error={isTried && isMissing ? 'Give the reason in a few words.' : undefined}
              onChange={(event) => setBecause(event.currentTarget.value.replaceAll('\n', ' '))}
            />
          </>
        ) : null}
        <p className={classes.quiet}>
          The plan is kept as it stands now. If the limbs are measured again, or target or bow
          change, it says that it no longer fits.
        </p>
      </FormBox>
    </Dialog>
  );
}
