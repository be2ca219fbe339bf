import { Button, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { FinishRoom, SessionLook } from '../../../shared/contract/finish.ts';
import type { SizedGrit } from '../../../shared/grit.ts';
import { decimal } from '../../../shared/measure.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { useWho } from '../../api/who.ts';
import { FormBox } from '../../parts/form-box.tsx';
import { ReasonForm } from '../../parts/reason-form.tsx';
import { Cautions } from './cautions.tsx';
import classes from './finish-room.module.css';
import { SprayAgainst } from './spray-against.tsx';
import { SprayBows } from './spray-bows.tsx';
import { mayBeLetPass, sprayErrors } from './spray-errors.ts';
import {
  bowsOf,
  newSession,
  type SprayFields,
  sourcesOf,
  sprayInput,
  usualPurpose,
} from './spray-fields.ts';
import { FilmInputs, LotInputs, PurposeTicks, SectionTicks } from './spray-inputs.tsx';
import { SpraySource } from './spray-source.tsx';
import { useSprayLook } from './use-spray-look.ts';
import { WhenField } from './when-field.tsx';

interface SprayFormProps {
  room: FinishRoom;
  nowMs: number;
  batchId: string | null;
  grits: readonly SizedGrit[];
  onDone: (words: string) => void;
  onClose: () => void;
}

/** Film and rack of the session as it is put together. */
function Reckoned({ look }: { look: SessionLook }) {
  const { slots, wetMil, dryMil } = look;
  const left = slots.all - slots.used;
  return (
    <>
      <p className={classes.text}>
        Rack: {slots.wanted} of {left} {left === 1 ? 'place' : 'places'} left today.
        {wetMil === null || dryMil === null
          ? ''
          : ` Each coat: ${decimal(wetMil, 2)} mil wet, ${decimal(dryMil, 2)} mil dry.`}
      </p>
      <Cautions cautions={look.cautions} />
    </>
  );
}

function doneWords(bows: number, warnings: readonly string[]): string {
  const coated = `The coat is recorded on ${bows} ${bows === 1 ? 'bow' : 'bows'}.`;
  return [coated, ...warnings].join(' ');
}

/** One gun-fill, several bows, one entry. */
export function SprayForm({ room, nowMs, batchId, grits, onDone, onClose }: SprayFormProps) {
  const [fields, setFields] = useState(() => newSession(room, batchId, nowMs));
  const [isTried, setTried] = useState(false);
  const [isPassing, setPassing] = useState(false);
  const isOwner = useWho()?.role === 'owner';
  const sources = sourcesOf(room);
  const source = sources.find(({ key }) => key === fields.source);
  const { look, again } = useSprayLook(fields, source);
  const command = useCommand(api.finish.spray, {
    onDone: (result) => {
      if (result.outcome === 'recorded') onDone(doneWords(result.coatIds.length, result.warnings));
      else again();
    },
  });
  const set = (part: Partial<SprayFields>) => setFields({ ...fields, ...part });
  const wrong = sprayErrors(fields, source);
  const errors = isTried ? { ...command.details, ...wrong } : {};
  const send = (reason?: string) => {
    setTried(true);
    if (Object.keys(wrong).length > 0) return;
    const override = reason === undefined ? {} : { override: { reason } };
    void command.run({ ...sprayInput(fields, source), ...override });
  };
  const against = look ?? { session: [], orders: [] };
  const part = { fields, onChange: set, errors };
  const mayPass = isOwner && mayBeLetPass(against.session, against.orders);
  return (
    <div className={classes.stack}>
      <FormBox
        title="Coat bows"
        submitLabel="Record the coat"
        command={command}
        onCancel={onClose}
        onSubmit={() => send()}
      >
        <SpraySource
          sources={sources}
          value={fields.source}
          nowMs={nowMs}
          error={errors.finishSystemId}
          onChange={(next) =>
            set({ source: next.key, bows: {}, lotId: null, purpose: usualPurpose(next) })
          }
        />
        {source === undefined ? null : (
          <>
            <SprayBows
              bows={bowsOf(room, source)}
              value={fields.bows}
              grits={grits}
              error={errors.bows}
              onChange={(bows) => set({ bows })}
            />
            <PurposeTicks {...part} />
            <FilmInputs {...part} />
            {source.batchId === null ? <LotInputs {...part} source={source} /> : null}
            <SectionTicks {...part} />
            {look === undefined ? null : <Reckoned look={look} />}
          </>
        )}
        <SprayAgainst session={against.session} orders={against.orders} />
        <TextInput
          label="Note"
          maxLength={1000}
          value={fields.note}
          onChange={(event) => set({ note: event.currentTarget.value })}
        />
        <WhenField value={fields.at} error={errors.at} onChange={(at) => set({ at })} />
      </FormBox>
      {mayPass && !isPassing ? (
        <div className={classes.buttons}>
          <Button variant="default" onClick={() => setPassing(true)}>
            Coat all the same ...
          </Button>
        </div>
      ) : null}
      {mayPass && isPassing ? (
        <ReasonForm
          title="Coat all the same"
          label="Why may it go on?"
          submitLabel="Record the coat all the same"
          command={command}
          onCancel={() => setPassing(false)}
          onSubmit={(reason) => send(reason)}
        />
      ) : null}
    </div>
  );
}
