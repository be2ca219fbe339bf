import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { byMethod, workPerJob } from '../../../renderer/screens/owner/by-method.ts';
import { dropBand, dropScale, frame } from '../../../renderer/screens/owner/drop-scale.ts';
import { chosenJobs, firstDayOf } from '../../../renderer/screens/owner/filter.ts';
import { jobCsv } from '../../../renderer/screens/owner/job-csv.ts';
import { wilsonInterval } from '../../../renderer/screens/owner/wilson.ts';
import {
  bandSentence,
  headline,
  leaningSentence,
  takesSentence,
} from '../../../renderer/screens/owner/words.ts';
import { job, jobs } from './jobs.ts';

/** How many standard errors of the true part a count lies away from it. */
function scoreRoot(hits: number, of: number, part: number): number {
  return (hits / of - part) / Math.sqrt((part * (1 - part)) / of);
}

describe('the interval of a count', () => {
  it('ends where the count lies 1.96 standard errors away, which is what defines it', () => {
    for (const [hits, of] of [
      [19, 23],
      [1, 2],
      [3, 40],
    ] as const) {
      const [low, high] = wilsonInterval(hits, of) ?? [0, 0];
      expect(scoreRoot(hits, of, low)).toBeCloseTo(1.96, 3);
      expect(scoreRoot(hits, of, high)).toBeCloseTo(-1.96, 3);
    }
  });

  it('stays inside 0 and 1 and is never empty at the ends', () => {
    const [low, high] = wilsonInterval(5, 5) ?? [0, 0];
    expect(high).toBe(1);
    expect(low).toBeCloseTo(5 / (5 + 1.959964 ** 2), 6);
    expect(wilsonInterval(0, 5)?.[0]).toBe(0);
    expect(wilsonInterval(0, 0)).toBeNull();
  });
});

describe('the page in words', () => {
  it('counts, and says how much the commonest way takes', () => {
    const known = jobs(23, 19);
    expect(headline(known, byMethod(known))).toBe(
      'Of 23 closed jobs 19 ended inside the band. Narrowed: 6 % more weight came off than reckoned (23 jobs).',
    );
    expect(headline(jobs(1, 0), [])).toBe('The 1 closed job missed its band.');
    expect(takesSentence(byMethod(jobs(2, 2)))).toBe('');
    expect(takesSentence(byMethod(jobs(4, 4, { effectiveness: 0.9 })))).toContain(
      '10 % less weight came off than',
    );
    expect(takesSentence(byMethod(jobs(4, 4, { effectiveness: 1.001 })))).toContain(
      'as much weight came off as',
    );
  });

  it('does not judge by too few jobs', () => {
    expect(bandSentence(jobs(4, 1), 0.8)).toContain('too few jobs to judge by');
    expect(leaningSentence(jobs(4, 4))).toBe('');
  });

  it('says when the bands are too narrow, too wide or as promised', () => {
    expect(bandSentence(jobs(30, 10), 0.8)).toContain('too narrow');
    expect(bandSentence(jobs(60, 60), 0.8)).toContain('wider than they need be');
    expect(bandSentence(jobs(23, 19), 0.8)).toContain('nothing speaks against it');
    expect(bandSentence([], 0.8)).toBe('');
  });

  it('says to which side they end', () => {
    expect(leaningSentence(jobs(12, 12))).toContain('0.3 lb under');
    expect(leaningSentence(jobs(12, 12, { measuredLbf: 45.4 }))).toContain(
      'where the forecast says',
    );
  });
});

describe('what is shown of the jobs', () => {
  it('goes by construction and by the day they closed', () => {
    const all = [
      job({ orderId: 'a', closedOn: '2026-06-15' }),
      job({ orderId: 'b', closedOn: '2025-12-31' }),
      job({ orderId: 'c', closedOn: '2026-01-01', construction: 'all-wood' }),
    ];
    const ids = (filter: Parameters<typeof chosenJobs>[1]) =>
      chosenJobs(all, filter, '2026-06-20').map(({ orderId }) => orderId);
    expect(ids({ construction: 'all', period: 'all' })).toEqual(['a', 'b', 'c']);
    expect(ids({ construction: 'all', period: 'this-year' })).toEqual(['a', 'c']);
    expect(ids({ construction: 'all-wood', period: 'this-year' })).toEqual(['c']);
    expect(ids({ construction: 'all', period: 'last-3-months' })).toEqual(['a']);
    expect(firstDayOf('last-3-months', '2026-05-31')).toBe('2026-02-28');
  });

  it('keeps ways of working apart, and jobs that tell nothing out', () => {
    const figures = byMethod([
      job({ effectiveness: 1.1 }),
      job({ effectiveness: 0.9 }),
      job({ effectiveness: 0.8, biteMethods: ['thin', 'narrow'] }),
      job({ effectiveness: 0.7, biteMethods: ['narrow', 'thin'] }),
      job({ effectiveness: 0.6, biteMethods: ['narrow', 'thin'] }),
      job({ effectiveness: null }),
      job({ biteMethods: [] }),
    ]);
    expect(figures.map(({ name, jobs: count }) => [name, count])).toEqual([
      ['Both faces thinned, Narrowed', 3],
      ['Narrowed', 2],
    ]);
    expect(figures[1]?.mean).toBeCloseTo(1, 12);
    expect(figures[1]?.sd).toBeCloseTo(Math.SQRT2 / 10, 12);
    expect(byMethod([job()])[0]?.sd).toBeNull();
    expect(workPerJob([job(), job({ bites: 4, weighings: 8 })])).toEqual({
      bites: 3.5,
      weighings: 6.5,
    });
    expect(workPerJob([])).toBeNull();
  });

  it('draws both axes to one scale that holds every band', () => {
    const all = [job(), job({ bandLbf: [38, 60], measuredDropLbf: -0.5 })];
    const scale = dropScale(all);
    for (const one of all) {
      const [low, high] = dropBand(one);
      expect(scale.low).toBeLessThanOrEqual(low);
      expect(scale.high).toBeGreaterThanOrEqual(high);
    }
    expect(scale.x(scale.low)).toBe(frame.left);
    expect(scale.x(scale.high)).toBe(frame.width - frame.right);
    expect(scale.y(scale.high)).toBe(frame.top);
    expect(scale.ticks.at(0)).toBe(scale.low);
    expect(scale.ticks.at(-1)).toBe(scale.high);
    expect(scale.ticks.length).toBeLessThanOrEqual(11);
    expect(dropBand(job())[0]).toBeCloseTo(5.8, 9);
  });
});

describe('the table as a file', () => {
  const untold = {
    orderId: 'u',
    orderNumber: '26-0002',
    closedOn: '2026-06-16',
    bowName: '=HYPERLINK("x"), "quoted"\nsecond line',
    construction: 'all-wood' as const,
    method: 'sanding' as const,
    why: 'It was not weighed after sanding.',
  };

  it('reads back as it was, numbers plain, formulas disarmed', () => {
    const { data, errors } = Papa.parse<Record<string, string>>(
      jobCsv([job({ measuredDropLbf: 0.1 + 0.2 }), job({ measuredDropLbf: -1.5 })], [untold]),
      { header: true },
    );
    expect(errors).toEqual([]);
    expect(data.map((row) => row['Measured drop (lbf)'])).toEqual(['0.3', '-1.5', '']);
    expect(data[0]).toMatchObject({ Order: '26-0001', 'Inside the band': 'yes', Bites: '3' });
    expect(data[2]?.['Left out because']).toBe('It was not weighed after sanding.');
    expect(data[2]?.Bow).toBe(`'=HYPERLINK("x"), "quoted"\nsecond line`);
  });
});
