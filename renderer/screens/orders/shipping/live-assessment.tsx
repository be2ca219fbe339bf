import { useDebouncedValue } from '@mantine/hooks';
import { skipToken, useQuery } from '@tanstack/react-query';
import { orpc } from '../../../api/client.ts';
import { sentenceOf } from '../../../api/errors.ts';
import orderClasses from '../order-page.module.css';
import { AssessmentNote } from './assessment-note.tsx';
import { type ParcelFields, questionOf } from './parcel-fields.ts';

/** Answers while the sizes are typed. Nothing is recorded by it. */
export function LiveAssessment({ fields }: { fields: ParcelFields }) {
  const [question] = useDebouncedValue(JSON.stringify(questionOf(fields)), 250);
  const asked = JSON.parse(question) as ReturnType<typeof questionOf>;
  const query = useQuery(orpc.shipments.assess.queryOptions({ input: asked ?? skipToken }));
  if (fields.carrierId === null) {
    return (
      <p className={orderClasses.quiet}>
        The limits of a carrier in your own words are not known here: look into its guide.
      </p>
    );
  }
  if (asked === null) {
    return (
      <p className={orderClasses.quiet}>
        Measure the outside of the closed box and weigh it: then the carrier's limits are looked at.
      </p>
    );
  }
  return (
    <div aria-live="polite" aria-busy={query.isFetching}>
      {query.data !== undefined ? (
        <AssessmentNote assessment={query.data} near={query.data.near} />
      ) : (
        <p className={orderClasses.quiet}>
          {query.isError ? sentenceOf(query.error) : 'Looking at the limits ...'}
        </p>
      )}
    </div>
  );
}
