import type { MixPlan } from '../../../shared/contract/finish.ts';
import { mixPartLabels } from '../../../shared/finish.ts';
import { Against } from './against.tsx';
import classes from './finish-room.module.css';
import { fluidOunceText, gramText, lifeText, mlText, pickText, reckonedText } from './mix-words.ts';

/** What is poured, by volume and by weight side by side. */
function PourTable({ plan }: { plan: MixPlan }) {
  if (plan.lines.length === 0) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the panel scrolls by keyboard.
    <section className={classes.scroll} aria-label="What to pour" tabIndex={0}>
      <table className={classes.table}>
        <thead>
          <tr>
            <th scope="col">Pour</th>
            <th scope="col">By volume</th>
            <th scope="col">By weight</th>
            <th scope="col">Scale reads, tared once</th>
          </tr>
        </thead>
        <tbody>
          {plan.lines.map(({ part, name, ml, g, scaleReadsG }) => (
            <tr key={part}>
              <th scope="row">
                {mixPartLabels[part]}
                {name === '' ? null : <div className={classes.small}>{name}</div>}
              </th>
              <td>
                {mlText(ml)}
                <div className={classes.small}>{fluidOunceText(ml)}</div>
              </td>
              <td>{gramText(g)}</td>
              <td>{gramText(scaleReadsG)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Ready</th>
            <td>
              {mlText(plan.readyMl)}
              <div className={classes.small}>{fluidOunceText(plan.readyMl)}</div>
            </td>
            <td>{gramText(plan.readyG)}</td>
            <td />
          </tr>
        </tfoot>
      </table>
    </section>
  );
}

function Areas({ plan }: { plan: MixPlan }) {
  if (plan.areas.length === 0) return null;
  return (
    <ul className={classes.list} aria-label="Areas">
      {plan.areas.map(({ orderId, number, sentence }) => (
        <li key={orderId} className={classes.quiet}>
          {number}: {sentence}
        </li>
      ))}
    </ul>
  );
}

/** A mix before it is made: what to pour, which lots it comes from, and what stands against it. */
export function MixPlanView({ plan }: { plan: MixPlan }) {
  const reckoned = reckonedText(plan);
  const life = lifeText(plan);
  return (
    <div className={classes.plan}>
      <PourTable plan={plan} />
      <div className={classes.stack}>
        {reckoned === '' ? null : <p className={classes.quiet}>{reckoned}</p>}
        <Areas plan={plan} />
        {life === '' ? null : <p className={classes.text}>{life}</p>}
        {plan.picks.length === 0 ? null : (
          <div>
            <p className={classes.text}>Issued from the stores, first expired first:</p>
            <ul className={classes.list} aria-label="Lots that are issued">
              {plan.picks.map((pick) => (
                <li key={`${pick.part} ${pick.lotId}`} className={classes.text}>
                  {pickText(pick)}
                </li>
              ))}
            </ul>
          </div>
        )}
        <Against title="It cannot be mixed like this:" sentences={plan.troubles} />
      </div>
    </div>
  );
}
