import classes from './long-text.module.css';

/** Longer texts are folded: the facts beside the job stay in sight. */
const foldedFrom = 240;

/** A note over the full width of a column. Nothing where there is none. */
export function LongText({ label, text }: { label: string; text: string }) {
  if (text.trim() === '') return null;
  if (text.length <= foldedFrom) {
    return (
      <div className={classes.note}>
        <span className={classes.label}>{label}</span>
        <p className={classes.text}>{text}</p>
      </div>
    );
  }
  return (
    <details className={classes.note}>
      <summary className={classes.summary}>
        <span className={classes.label}>{label}: </span>
        {text.slice(0, foldedFrom / 2)} ... (all of it)
      </summary>
      <p className={classes.text}>{text}</p>
    </details>
  );
}
