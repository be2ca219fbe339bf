import type { ReactNode } from 'react';
import type { FinishRoom } from '../../../shared/contract/finish.ts';
import type { SizedGrit } from '../../../shared/grit.ts';
import { Advice } from './advice.tsx';
import { MixForm } from './mix-form.tsx';
import { SandingForm } from './sanding-form.tsx';
import { SprayForm } from './spray-form.tsx';

/** What is being done at the moment; one thing at a time. */
export type Work = { kind: 'mix' } | { kind: 'sand' } | { kind: 'coat'; batchId: string | null };

interface WorkFormProps {
  work: Work;
  room: FinishRoom;
  grits: readonly SizedGrit[];
  nowMs: number;
  /** Finish that most bows wait for. */
  usualId: string | null;
  onDone: (said: ReactNode) => void;
  onClose: () => void;
}

/** The form of what is being done, over the whole width. */
export function WorkForm(props: WorkFormProps) {
  const { work, room, grits, nowMs, usualId, onDone, onClose } = props;
  switch (work.kind) {
    case 'mix':
      return (
        <MixForm
          room={room}
          systemId={usualId}
          onMixed={({ name }) => onDone(`${name} is mixed, its parts are issued, its clock runs.`)}
          onClose={onClose}
        />
      );
    case 'coat':
      return (
        <SprayForm
          room={room}
          nowMs={nowMs}
          batchId={work.batchId}
          grits={grits}
          onDone={onDone}
          onClose={onClose}
        />
      );
    case 'sand':
      return (
        <SandingForm
          bows={room.bows.filter(({ stage }) => stage !== 'cure')}
          orderId={null}
          lastGrits={(orderId) => room.bows.find((bow) => bow.orderId === orderId)?.lastGrits ?? []}
          grits={grits}
          onDone={(advice) => onDone(<Advice advice={advice} />)}
          onClose={onClose}
        />
      );
  }
}
