import { useQuery } from '@tanstack/react-query';
import { orpc } from '../../api/client.ts';
import { setPerson } from '../../api/session.ts';
import { DemoBanner } from '../../frame/demo-banner.tsx';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import classes from './start-page.module.css';
import { StartPage } from './start-page.tsx';

/** Who is working: everything written from here on carries this name. */
export function ChoosePerson() {
  const people = useQuery(orpc.people.list.queryOptions());
  if (people.error !== null) {
    return (
      <StartPage title="Who is working?">
        <ErrorNote error={people.error} onAgain={() => void people.refetch()} />
      </StartPage>
    );
  }
  if (people.data === undefined) {
    return (
      <StartPage title="Who is working?">
        <BusyNote />
      </StartPage>
    );
  }
  return (
    <StartPage title="Who is working?">
      <DemoBanner />
      <div className={classes.people}>
        {people.data
          .filter((person) => person.active)
          .map((person) => (
            <button
              key={person.id}
              type="button"
              className={classes.person}
              onClick={() => setPerson(person.id)}
            >
              <span className={classes.initials}>{person.initials}</span>
              <span className={classes.who}>
                {person.name}
                <span className={classes.role}>{person.role}</span>
              </span>
            </button>
          ))}
      </div>
    </StartPage>
  );
}
