import { Button, Select } from '@mantine/core';
import { useState } from 'react';
import type { FinishRoom } from '../../../shared/contract/finish.ts';
import { momentText } from '../../parts/days.ts';
import { Mark } from '../../parts/mark.tsx';
import { ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { AirForm } from './air-form.tsx';
import { AirReadings } from './air-readings.tsx';
import { AirView } from './air-view.tsx';
import { Answer } from './answer.tsx';
import classes from './finish-room.module.css';
import { useAirLook } from './use-air-look.ts';

/** A reading older than that says little of the room now, ms. */
const oldMs = 4 * 60 * 60_000;

interface AirPanelProps {
  room: FinishRoom;
  /** Finish that is mixed or wanted most; its limits are drawn first. */
  usualId: string | null;
}

/** Today's air: dew point, margin and whether a coat may go on. */
export function AirPanel({ room, usualId }: AirPanelProps) {
  const [isOpen, setOpen] = useState(false);
  const [chosenId, setChosen] = useState<string | null>(null);
  const inUse = room.systems.filter(({ active }) => active);
  const finish = inUse.find(({ id }) => id === (chosenId ?? usualId)) ?? null;
  const { air } = room;
  const { look, isBusy, error, again } = useAirLook(air, finish?.id ?? null);
  const isOld = air !== null && Date.parse(room.now) - Date.parse(air.at) > oldMs;
  return (
    <Panel
      title="Today's air"
      id="air"
      actions={isOpen ? null : <Button onClick={() => setOpen(true)}>Read the air</Button>}
    >
      <div className={classes.stack}>
        {inUse.length < 2 ? null : (
          <Select
            label="Against the sheet of"
            data={inUse.map(({ id, name }) => ({ value: id, label: name }))}
            value={finish?.id ?? null}
            onChange={setChosen}
          />
        )}
        {isOpen ? <AirForm finish={finish} onClose={() => setOpen(false)} /> : null}
        {air === null ? (
          isOpen ? null : (
            <p className={classes.text}>
              Nobody has read the air yet. Read it before the first coat.
            </p>
          )
        ) : (
          <>
            <p className={classes.text}>
              {isOld ? (
                <Mark kind="attention">
                  Read {momentText(air.at)}, by {air.personName}: read it again before a coat.
                </Mark>
              ) : (
                `Read ${momentText(air.at)}, by ${air.personName}.`
              )}
            </p>
            {error === null ? null : <ErrorNote error={error} onAgain={again} />}
            {isOpen ? null : (
              <Answer isBusy={isBusy}>
                <AirView air={air} look={look} finishName={finish?.name ?? ''} isOld={isOld} />
              </Answer>
            )}
            <AirReadings />
          </>
        )}
      </div>
    </Panel>
  );
}
