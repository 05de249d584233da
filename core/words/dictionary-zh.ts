/** What zones and complaints are called in Chinese. Common practice, no source. */
import type { Dictionary } from './dictionary-types.ts';

export const chinese: Dictionary = {
  sentence: /[。！\n]+|(?<=[？?])/,
  // Folding makes full-width signs half-width.
  clause: /[,，;；:：?？()（）]|但是|但|不过|只是|可是|然而/,
  inner: /内侧|里侧|里面那侧|内边/,
  outer: /外侧|外边/,
  denies: /没有?(?!用|办法)|不(?!过|仅|但|光|只|错)|无|未|别|毫无|从未|并非|免得/,
  reach: 6,
  over: /不再|消失|好了|解决了|不见了|以前|上一轮|上一双|旧鞋|原来那双|本以为|以为会|担心|怕会|如果|别人说|其他人说/,
  answersNo: /^\s*(?:没有|完全没有|没|一点都没有|不会)(?:$|[。,，])/,
  trouble:
    /跑偏|偏移|移位|滑到|滑向|歪|往外|往里|红|肿|别扭|难受|不舒服|不适|不对劲|有问题|怪|烦|皱|折起|卷|太高|太低|偏高|太长|太短|流血|出血|淤青|跑到/,
  zones: [
    { words: /大脚趾|大拇趾|大脚指|大趾|脚拇指|拇趾(?!外翻)/g, zone: 'P1' },
    { words: /小脚趾|小趾|小拇趾|小脚指|小指头/g, zone: 'U3' },
    { words: /拇囊|大脚骨|拇外翻|拇趾外翻|鞋头内侧/g, zone: 'U2' },
    { words: /挡泥膜|鞋头外侧|外侧护片/g, zone: 'U3' },
    { words: /趾尖|脚趾甲|趾甲|指甲|鞋头|防撞头|脚尖/g, zone: 'U1', inner: 'U2', outer: 'U3' },
    { words: /前帮|弯折处|弯折位|弯折线|趾根|趾背|脚趾上面|脚趾上方/g, zone: 'U4' },
    { words: /脚趾|趾头|脚指头|脚指/g, zone: 'P2' },
    { words: /前脚掌|前掌|跖骨/g, zone: 'P4', inner: 'P3', outer: 'P5' },
    { words: /足弓|脚弓|腰窝|脚心/g, zone: 'P6' },
    { words: /中足|脚掌中部/g, zone: 'P6', inner: 'U6', outer: 'P7' },
    { words: /内腰/g, zone: 'U6' },
    { words: /外腰/g, zone: 'U7' },
    { words: /脚背|脚面|足背|鞋舌|鞋喉|眼片/g, zone: 'U5' },
    { words: /跟腱|后领|后提/g, zone: 'U9' },
    { words: /脚踝|踝骨|踝|领口|鞋口|鞋领/g, zone: 'U8' },
    { words: /后套|港宝|后跟杯|后包/g, zone: 'U10' },
    {
      words: /脚后跟|后脚跟|后跟|脚跟|鞋跟/g,
      ...{ zone: 'U10', inner: 'P8', outer: 'P9', under: 'P9' },
    },
  ],
  kinds: [
    {
      words: /掉跟|不跟脚|掉鞋|脱跟/g,
      ...{ kind: 'heel-slip', zone: 'U10' },
    },
    {
      words:
        /打滑|滑动|滑脱|上滑|往上提|往上跑|往上走|提起来|提跟|上下动|上下窜|上下滑|抬起来|脱出|滑出|跑出来|(?<!顺|光)滑(?!倒)/g,
      ...{ kind: 'heel-slip', zone: 'U10', beside: /后跟|脚跟|鞋跟/, unless: /鞋舌/ },
    },
    {
      words: /压|勒|咬|硌|疼|痛/g,
      ...{ kind: 'lace-bite', zone: 'U5', beside: /鞋带/ },
    },
    {
      words:
        /顶趾|顶脚趾|撞鞋头|顶到头|顶鞋头|黑趾甲|趾甲(?:都)?(?:发)?(?:黑|紫)|指甲(?:都)?(?:发)?(?:黑|紫)/g,
      kind: 'toe-bang',
      zone: 'U1',
    },
    {
      words: /撞|顶|碰/g,
      kind: 'toe-bang',
      zone: 'U1',
      beside: /脚趾(?:.*)(?:鞋头|前面|前端)|趾甲|趾尖/,
    },
    { words: /顶|压|硌|凸/g, kind: 'arch-pressure', zone: 'P6', beside: /足弓|脚弓|脚心/ },
    { words: /发麻|麻木|麻了|麻(?!烦)|没知觉|没有知觉|失去知觉|针刺感|针扎/g, kind: 'numbness' },
    { words: /发烫|灼热|灼烧|火辣|起泡|水泡|磨泡|烫|烧(?=得|起来|着)/g, kind: 'hot-spot' },
    {
      words:
        /硬边|边缘(?:.{0,4})(?:硬|硌|割|锋利|顶)|(?:边|缝线|接缝|棱)(?:.{0,3})(?:硌|割|扎)|感觉到边|割脚/g,
      kind: 'harsh-edge',
    },
    {
      words: /磨破|磨脚|磨红|磨(?!合)|蹭(?!地)|擦破|刮|破皮/g,
      kind: 'rubbing',
      unless: /磨合后很/,
    },
    {
      words: /踩到底|触底|踩扁|塌|没有?弹性|没弹|没有?缓震|感觉到地|感到地|踩到地|压到底/g,
      kind: 'bottoming-out',
    },
    {
      words:
        /打滑|抓地(?:力)?(?:很|太|比较|有点|偏)?(?:差|弱|不(?!错))|抓不住|不防滑|滑倒|湿滑|(?<!后跟.*)(?:路|地|草|石|砖|冰|井盖)(?:.{0,4})滑/g,
      kind: 'slipping',
    },
    {
      words: /弯不|难弯|不好弯|弯折(?:.{0,3})(?:硬|费力|困难|僵)|僵|板硬|不易弯|像木板/g,
      kind: 'stiff',
    },
    {
      words: /偏硬|太硬|很硬|硬邦邦|有点硬|发硬|震(?:得|脚|感|动)|冲击(?:很|太|大)|震到/g,
      kind: 'harsh',
      unless: /边/,
    },
    { words: /不稳|不太稳|晃(?!荡)|侧翻|崴|摇摆|东倒西歪|翻脚/g, kind: 'unstable' },
    { words: /闷|不透气|出汗|汗|(?:很|太|好|发|有点|又)热|湿透/g, kind: 'overheating' },
    { words: /绊|勾到|挂到|蹭地|勾住/g, kind: 'catching' },
    { words: /响|吱|咔|噪|声音(?:很|太|大)|啪/g, kind: 'noise', unless: /影响/ },
    {
      words:
        /(?:进|钻|卡|夹|灌|倒)(?:.{0,4})(?:石|沙|砂|土|泥)|(?:石子|小石头|沙子|砂子|沙|泥)(?:.{0,4})(?:进|钻|卡|夹|掉)/g,
      kind: 'debris',
    },
    { words: /过紧|太紧|偏紧|很紧|有点紧|挤|窄|勒|太小|偏小|紧绷/g, kind: 'too-tight' },
    { words: /过松|太松|偏松|很松|有点松|松垮|晃荡|太大|偏大|太宽|空荡|空隙/g, kind: 'too-loose' },
    { words: /压(?!缩|力测)|顶(?!部|级|着风|风)|硌|夹/g, kind: 'pressure' },
    { words: /疼|痛/g, kind: 'pain' },
  ],
};
