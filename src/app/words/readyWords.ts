const COUNTS = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine'];

/** What says Stop, and the question that is asked before "ready" is taken all the same. Undefined where nothing stops. */
export function stopsQuestion(checks: number, isVolumeStopped: boolean): string | undefined {
  const said = [
    ...(checks > 0
      ? [`${COUNTS[checks] ?? checks} ${checks === 1 ? 'check says' : 'checks say'} Stop.`]
      : []),
    ...(isVolumeStopped ? ['Measure says Stop.'] : []),
  ];
  return said.length === 0 ? undefined : `${said.join(' ')} Ready all the same?`;
}
