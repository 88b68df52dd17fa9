import { missingApprovals } from '../oil/approval.ts';
import { fitOfGrade, type GradeFit, type OilNamed, readGrade } from '../oil/grade.ts';

const MANUAL = 'The car’s manual says what it allows.';

/**
 * What to know of an oil that was poured, beside what the car asks for: in words, never a refusal. Nothing where
 * it fits, or where either is not known.
 *
 * @example oilFitSentences({ grade: '10W-60' }, { grade: '5W-40' })
 * // ["5W-40 is thinner when hot than the 10W-60 this car asks for. The car’s manual says what it allows."]
 */
export function oilFitSentences(asked: OilNamed, poured: OilNamed): string[] {
  return [...gradeSentences(asked.grade, poured.grade), ...approvalSentences(asked, poured)];
}

function gradeSentences(asked = '', poured = ''): string[] {
  const [wanted, found] = [readGrade(asked), readGrade(poured)];
  if (poured.trim() !== '' && found === null && wanted !== null)
    return [
      `“${poured.trim()}” is no viscosity grade we know, so it is not compared with ${asked.trim()}.`,
    ];
  if (wanted === null || found === null) return [];
  const said = fitWords(fitOfGrade(wanted, found));
  if (said.length === 0) return [];
  return [
    `${poured.trim()} ${said.join(', and ')} than the ${asked.trim()} this car asks for. ${MANUAL}`,
  ];
}

function fitWords({ hot, thinnerAt150, cold }: GradeFit): string[] {
  return [
    ...(hot === 'thinner' || hot === 'thicker' ? [`is ${hot} when hot`] : []),
    ...(thinnerAt150 ? ['may be thinner at 150 °C'] : []),
    ...(cold === 'warmer' ? ['is rated only for warmer cold starts'] : []),
  ];
}

function approvalSentences(asked: OilNamed, poured: OilNamed): string[] {
  if (!asked.approval?.trim() || !poured.approval?.trim()) return [];
  const missing = missingApprovals(asked.approval, poured.approval);
  if (missing.length === 0) return [];
  return [`Not named on this oil: ${missing.join(', ')}, which this car asks for. ${MANUAL}`];
}
