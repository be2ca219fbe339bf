import { TextInput } from '@mantine/core';
import type { FinishRoom, SessionLook } from '../../../shared/contract/finish.ts';
import type { SizedGrit } from '../../../shared/grit.ts';
import { decimal } from '../../../shared/measure.ts';
import { FormBox } from '../../parts/form-box.tsx';
import { ErrorNote } from '../../parts/notes.tsx';
import { Answer } from './answer.tsx';
import { Cautions } from './cautions.tsx';
import classes from './finish-room.module.css';
import { SprayAgainst } from './spray-against.tsx';
import { SprayBows } from './spray-bows.tsx';
import { bowsOf, type Source, usualPurpose } from './spray-fields.ts';
import { FilmInputs, LotInputs, PurposeTicks, SectionTicks } from './spray-inputs.tsx';
import { SprayOverride } from './spray-override.tsx';
import { SpraySource } from './spray-source.tsx';
import { useSpray } from './use-spray.ts';
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
  const left = Math.max(0, slots.all - slots.used);
  return (
    <p className={classes.text}>
      Rack: {slots.wanted} of {left} {left === 1 ? 'place' : 'places'} left today.
      {wetMil === null || dryMil === null
        ? ''
        : ` Each coat: ${decimal(wetMil, 2)} mil wet, ${decimal(dryMil, 2)} mil dry.`}
    </p>
  );
}

interface CoatsProps extends Pick<SprayFormProps, 'room' | 'grits'> {
  spray: ReturnType<typeof useSpray>;
  source: Source;
}

/** Bows and coat, once it is known what is put on. */
function Coats({ spray, source, room, grits }: CoatsProps) {
  const { fields, set, errors } = spray;
  const part = { fields, onChange: set, errors };
  return (
    <>
      <Cautions cautions={source.system.cautions} />
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
    </>
  );
}

/** One gun-fill, several bows, one entry. */
export function SprayForm({ grits, onClose, ...began }: SprayFormProps) {
  const spray = useSpray(began);
  const { fields, set, errors, source, look, against, command, send } = spray;
  return (
    <div className={classes.stack}>
      <FormBox
        title="Coat bows"
        submitLabel="Record the coat"
        command={command}
        onCancel={onClose}
        answer={
          <Answer isBusy={spray.isBusy}>
            {spray.error === null ? null : <ErrorNote error={spray.error} onAgain={spray.again} />}
            {look === undefined ? null : <Reckoned look={look} />}
            <SprayAgainst session={against.session} orders={against.orders} />
          </Answer>
        }
        onSubmit={() => send()}
      >
        <SpraySource
          sources={spray.sources}
          value={fields.source}
          nowMs={spray.momentMs}
          error={errors.finishSystemId}
          onChange={(next) =>
            set({ source: next.key, bows: {}, lotId: null, purpose: usualPurpose(next) })
          }
        />
        <WhenField value={fields.at} error={errors.at} onChange={(at) => set({ at })} />
        {source === undefined ? null : (
          <Coats spray={spray} source={source} room={began.room} grits={grits} />
        )}
        <TextInput
          label="Note"
          maxLength={1000}
          value={fields.note}
          onChange={(event) => set({ note: event.currentTarget.value })}
        />
      </FormBox>
      <SprayOverride against={against} command={command} onPass={send} />
    </div>
  );
}
