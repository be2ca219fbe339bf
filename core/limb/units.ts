/** Pounds-force a square inch in one gigapascal: 10^6 psi = 6.894757 GPa (NIST SP 811, 2008, App. B). */
export const psiPerGpa = 1e6 / 6.894757;

export function psiFromGpa(gpa: number): number {
  return gpa * psiPerGpa;
}
