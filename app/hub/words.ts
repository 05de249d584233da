/** The few words that the hub itself says to a phone, before the app is there to speak. */
export type HubLanguage = 'en' | 'zh';

interface HubWords {
  readonly title: string;
  readonly why: string;
  /** The first is the link to the certificate. */
  readonly steps: readonly string[];
  readonly open: string;
  readonly care: string;
}

export const hubWords: Readonly<Record<HubLanguage, HubWords>> = {
  en: {
    title: 'Pairlog on this network',
    why: 'Once per phone: tell it to trust this hub. After that Pairlog can be installed and works without a network.',
    steps: [
      'Download the certificate of this hub.',
      'iPhone and iPad: open Settings, “Profile Downloaded”, and install it; then Settings → General → About → Certificate Trust Settings, and switch it on.',
      'Android: open Settings, search for “CA certificate”, choose “Install anyway”, and pick the downloaded file.',
    ],
    open: 'Open Pairlog.',
    care: 'Do this only if somebody of your group gave you this address. To undo it, remove the certificate in the same settings.',
  },
  zh: {
    title: '本网络上的 Pairlog',
    why: '每部手机做一次：让它信任这台服务器。之后就可以安装 Pairlog，没有网络也能用。',
    steps: [
      '下载本服务器的证书。',
      'iPhone 和 iPad：打开“设置”中的“已下载描述文件”并安装；再到“设置 → 通用 → 关于本机 → 证书信任设置”中打开它。',
      '安卓：打开“设置”，搜索“CA 证书”，选“仍然安装”，再选刚下载的文件。',
    ],
    open: '打开 Pairlog。',
    care: '只有本组的人给了你这个地址时才这样做。要撤销，请在同一设置中删除证书。',
  },
};
