/** What does the browser know about the network of this device? */

/** The part of the Network Information API that is asked; only Chromium has it, and only on phones in full. */
interface Connection {
  readonly type?: string;
  readonly saveData?: boolean;
}

/** True only where the browser says that the network costs nothing by the byte; unknown counts as no. */
export const isUnmetered = (): boolean => {
  const { connection } = navigator as Navigator & { readonly connection?: Connection };
  return (
    connection !== undefined &&
    connection.saveData !== true &&
    (connection.type === 'wifi' || connection.type === 'ethernet')
  );
};
