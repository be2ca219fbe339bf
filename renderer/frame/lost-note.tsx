import { useConnection } from '../api/connection.ts';
import { Mark } from '../parts/mark.tsx';
import { useLongLost, whatToDo } from '../screens/start-up/reconnecting.tsx';
import classes from './frame.module.css';

/** Says that the core does not answer, and after a while what to do about it. */
export function LostNote() {
  const { state } = useConnection();
  const late = useLongLost();
  return (
    <div role="status" className={classes.over}>
      {state === 'open' ? null : (
        <div className={classes.lost}>
          <Mark kind="attention">Reconnecting ...</Mark>
          <span>
            {late
              ? whatToDo()
              : 'What you see may be out of date. What you type stays here until it can be saved.'}
          </span>
        </div>
      )}
    </div>
  );
}
