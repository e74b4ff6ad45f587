import { useEffect, useState } from 'react';
import { useShop } from '../shop/shopContext';

/** The photo of a pour, from the shop; in words where it is not there. */
export function PourPhoto({ id, alt }: { id: string; alt: string }) {
  const { store } = useShop();
  const [found, setFound] = useState<{ id: string; url: string | undefined }>();
  useEffect(() => {
    let url: string | undefined;
    let isOver = false;
    store.photo(id).then(
      (photo) => {
        if (isOver) return;
        url = photo === undefined ? undefined : URL.createObjectURL(photo);
        setFound({ id, url });
      },
      () => {
        if (!isOver) setFound({ id, url: undefined });
      },
    );
    return () => {
      isOver = true;
      if (url !== undefined) URL.revokeObjectURL(url);
    };
  }, [store, id]);
  if (found?.id !== id) return <p className="note quiet">The photo is being fetched …</p>;
  if (found.url === undefined) return <p className="note quiet">The photo is not on this device.</p>;
  return <img className="pourphoto" src={found.url} alt={alt} />;
}
