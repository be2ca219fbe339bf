import { Button, Radio, Textarea, TextInput } from '@mantine/core';
import dayjs from 'dayjs';
import { type StrungState, strungMissing, strungState } from '../../../shared/arrival.ts';
import type { ArrivalFields } from '../../../shared/contract/arrival.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { Mark } from '../../parts/mark.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { useOrder } from '../orders/order-screen.tsx';
import { usualReasons } from './arrival-fields.ts';
import { SavedForm, TableStep } from './part.tsx';
import { minutesText, restAt } from './rest-clock.ts';
import { StopSign } from './stop-sign.tsx';
import classes from './unpacking.module.css';
import { type ArrivalPart, useArrivalPart } from './use-arrival-part.ts';
import { useMinute } from './use-minute.ts';

const title = '5  String it, or say why not';

const stateWords: Record<StrungState, string> = {
  'not-yet': 'Not yet',
  strung: 'Strung',
  'not-strung': 'Not strung, because ...',
};

/** The first stringing in this shop, with what is seen then, or the reason why there was none. */
export function StringStep() {
  const { order } = useOrder();
  const part = useArrivalPart();
  const { value, set } = part;
  const isBarred = order.card.openStops > 0;
  return (
    <TableStep
      title={title}
      isDone={order.arrival !== null && strungMissing(order.arrival).length === 0}
    >
      <StopSign />
      {isBarred ? null : <Cautions restingSince={value.restingSince} />}
      <SavedForm title={title} saveLabel="Save the stringing" part={part}>
        <Radio.Group
          size="md"
          label="Was it strung?"
          value={value.strung}
          error={part.errors.strung}
          onChange={(chosen) => set({ strung: strungState.parse(chosen) })}
        >
          {strungState.options.map((state) => (
            <Radio
              key={state}
              value={state}
              label={stateWords[state]}
              // One that was strung before the finding was made stays told as it was.
              disabled={state === 'strung' && isBarred && order.arrival?.strung !== 'strung'}
            />
          ))}
        </Radio.Group>
        {value.strung === 'strung' ? <StrungFields part={part} /> : null}
        {value.strung === 'not-strung' ? <WhyNot part={part} hasStop={isBarred} /> : null}
      </SavedForm>
    </TableStep>
  );
}

function Cautions({ restingSince }: { restingSince: string | null }) {
  const now = useMinute();
  const rest = restingSince === null ? null : restAt(restingSince, now);
  return (
    <>
      <ul className={classes.caution}>
        <li>Use a stringer. Never step through the bow.</li>
        <li>Stand clear of the path of the limbs, and let nobody stand in it.</li>
        <li>Wear eye protection.</li>
      </ul>
      {rest === null ? (
        <Mark kind="attention">Nobody noted since when it has been out of the box.</Mark>
      ) : null}
      {rest !== null && !rest.isRested ? (
        <Mark kind="attention">
          Out of the box for {minutesText(rest.minutes)}: better let it rest until{' '}
          {dayjs(rest.until).format('HH:mm')} (common practice).
        </Mark>
      ) : null}
    </>
  );
}

function StrungFields({ part }: { part: ArrivalPart }) {
  const { value, set, errors } = part;
  const words = (key: 'alignment' | 'stringTrack', label: string, placeholder: string) => (
    <TextInput
      label={label}
      placeholder={placeholder}
      maxLength={1000}
      autoComplete="off"
      value={value[key]}
      error={errors[key]}
      onChange={(event) => set({ [key]: event.currentTarget.value } as Partial<ArrivalFields>)}
    />
  );
  return (
    <>
      <FieldGrid>
        {words('alignment', 'Alignment', 'Limbs in line, no twist')}
        {words('stringTrack', 'String track', 'Down the middle of both limbs')}
      </FieldGrid>
      <FieldGrid>
        <NumberField
          label="Brace height, in"
          unit="in"
          value={value.braceIn}
          error={errors.braceIn}
          onChange={(braceIn) => set({ braceIn })}
        />
        <NumberField
          label="Tiller, upper minus lower, in"
          unit="in"
          placeholder="1/8 or -1/16"
          value={value.tillerIn}
          error={errors.tillerIn}
          onChange={(tillerIn) => set({ tillerIn })}
        />
      </FieldGrid>
    </>
  );
}

function WhyNot({ part, hasStop }: { part: ArrivalPart; hasStop: boolean }) {
  const { value, set, errors } = part;
  return (
    <>
      <fieldset className={`${classes.buttons} ${classes.group}`} aria-label="Usual reasons">
        {usualReasons(hasStop).map((reason) => (
          <Button
            key={reason}
            h="auto"
            mih={56}
            variant="default"
            styles={{ label: { whiteSpace: 'normal' } }}
            onClick={() => set({ notStrungBecause: reason })}
          >
            {reason}
          </Button>
        ))}
      </fieldset>
      <Textarea
        label="Not strung because"
        required
        maxLength={1000}
        value={value.notStrungBecause}
        error={errors.notStrungBecause}
        onChange={(event) => set({ notStrungBecause: event.currentTarget.value })}
      />
    </>
  );
}
