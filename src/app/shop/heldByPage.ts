import { pack, type Held } from '../../store';
import type { KeptSource } from '../ticket/keptSource';
import type { OpenShop } from './shopContext';

/**
 * What the page holds and a backup of the disk alone would lack: what stands on a ticket and is not kept; all that is known of the shop, where
 * the disk is not to be had or no longer says what it did. Undefined: the disk has it all.
 */
export async function heldByPage({
  store,
  view,
  problem,
  onTicket,
}: Pick<OpenShop, 'store' | 'view' | 'problem' | 'onTicket'>): Promise<Held | undefined> {
  const ticket = onTicket.now();
  const memory = store.keeps === 'page' ? await store.contents() : undefined;
  if (ticket === undefined && memory === undefined && problem === undefined) return undefined;
  const core = memory?.core ?? (problem === undefined ? undefined : view?.core);
  const known = memory?.pieces ?? (problem === undefined ? [] : (view?.pieces ?? []));
  return {
    ...(core === undefined ? {} : { core }),
    pieces: [...known, ...(ticket === undefined ? [] : [ticket.piece])],
    scans: [...(memory?.scans ?? []), ...(await packedScan(ticket?.scan))],
    photos: memory?.photos ?? [],
  };
}

/** None where it is kept already, or its file cannot be read any more: then the backup says that it has it not. */
async function packedScan(source: KeptSource | undefined): Promise<Held['scans']> {
  if (source?.id === undefined || source.isKept === true) return [];
  try {
    const file = await source.bytes();
    const { id, name } = source;
    return [{ id, name, bytes: file.byteLength, packed: await pack(file) }];
  } catch {
    return [];
  }
}
