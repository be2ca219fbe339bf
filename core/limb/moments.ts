/** Area, and its first and second moment about the belly face: in2, in3, in4. */
export interface Moments {
  area: number;
  first: number;
  second: number;
}

export function plus(a: Moments, b: Moments): Moments {
  return { area: a.area + b.area, first: a.first + b.first, second: a.second + b.second };
}

export function times(a: Moments, factor: number): Moments {
  return { area: a.area * factor, first: a.first * factor, second: a.second * factor };
}

/** Integrals of y^n (width0 + slope y) over y, for n = 0, 1, 2. */
export function slabMoments(width0: number, slope: number, from: number, to: number): Moments {
  const integral = (n: number) =>
    (width0 * (to ** (n + 1) - from ** (n + 1))) / (n + 1) +
    (slope * (to ** (n + 2) - from ** (n + 2))) / (n + 2);
  return { area: integral(0), first: integral(1), second: integral(2) };
}

/**
 * What one rounded edge takes away between two heights. The circle's centre lies one radius
 * inside the face; at a distance u from that centre towards the face, the edge has lost
 * r - sqrt(r^2 - u^2) of width. The integrals of u^n times that are elementary.
 *
 * @param face height of the face the edge belongs to
 * @param inward 1 where the section lies above that face, -1 where it lies below
 */
export function roundedCornerMoments(
  radius: number,
  face: number,
  inward: 1 | -1,
  from: number,
  to: number,
): Moments {
  const centre = face + inward * radius;
  const distance = (y: number) => Math.min(Math.max(inward * (centre - y), 0), radius);
  const [low, high] = [distance(from), distance(to)].sort((a, b) => a - b) as [number, number];
  const part = (antiderivative: (u: number) => number) =>
    antiderivative(high) - antiderivative(low);
  const root = (u: number) => Math.sqrt(Math.max(radius ** 2 - u ** 2, 0));
  const angle = (u: number) => Math.asin(Math.min(u / radius, 1));
  const lost0 = part((u) => radius * u - (u * root(u) + radius ** 2 * angle(u)) / 2);
  const lost1 = part((u) => (radius * u ** 2) / 2 + root(u) ** 3 / 3);
  const lost2 = part(
    (u) =>
      (radius * u ** 3) / 3 -
      (u * (2 * u ** 2 - radius ** 2) * root(u) + radius ** 4 * angle(u)) / 8,
  );
  // y = centre - inward u, expanded for the moments about the belly face.
  return {
    area: lost0,
    first: centre * lost0 - inward * lost1,
    second: centre ** 2 * lost0 - 2 * centre * inward * lost1 + lost2,
  };
}
