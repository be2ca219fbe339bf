import classes from './facts.module.css';

interface FactsProps {
  /** Name and value; what is empty is left out. */
  facts: readonly (readonly [string, string])[];
  /** Said when nothing is known. */
  none?: string;
}

/** Facts as name and value. */
export function Facts({ facts, none = 'Nothing noted yet.' }: FactsProps) {
  const known = facts.filter(([, value]) => value !== '');
  if (known.length === 0) return <p style={{ margin: 0, color: 'var(--quiet)' }}>{none}</p>;
  return (
    <dl className={classes.facts}>
      {known.map(([name, value]) => (
        <div key={name} style={{ display: 'contents' }}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
