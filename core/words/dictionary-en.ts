/** What zones and complaints are called in English. Common practice, no source. */
import type { Dictionary } from './dictionary-types.ts';

const heel = /\bheels?\b/;

export const english: Dictionary = {
  sentence: /[.!\n]+|(?<=\?)/,
  clause: /[,;:?()]|\b(?:but|although|though|however|except|only|while|and then)\b/,
  inner: /\b(?:inside|inner|medial|big[- ]toe side)\b/,
  outer: /\b(?:outside|outer|lateral|little[- ]toe side)\b/,
  denies:
    /\b(?:no|not|never|without|none|nothing|nobody|nor|neither|hardly|barely|zero|free of|free from|instead of|rid of)\b|n't\b/,
  reach: 34,
  over: /\b(?:gone|went away|goes away|disappeared|vanished|stopped (?:rubbing|slipping|hurting)|no longer|not any ?more|any ?more than|used to|old (?:pair|shoes?)|last (?:round|pair|month)|previous|expected|feared|worried|afraid|would have|might have|if it|solved|fixed|cured|others (?:say|said|complain))\b/,
  answersNo: /^\s*(?:none|no|nope|never|not at all|not once|nothing)\b/,
  trouble:
    /\b(?:slid\w*|wander\w*|mov(?:es?|ed|ing)|shift\w*|twist\w*|drift\w*|bother\w*|annoy\w*|irritat\w*|troubl\w*|problem\w*|issues?|uncomfortable|red|swollen|swell\w*|bruis\w*|bleed\w*|bled|blood\w*|odd|strange|weird|wrong|bad|awful|awkward|feel it|not (?:stay|right|good|comfortable|happy)|never where|too (?:high|low|short|long|thick|thin)|folds?|bunch\w*|wrinkl\w*)\b/,
  zones: [
    { words: /\b(?:big|great) toes?\b/g, zone: 'P1' },
    { words: /\b(?:little|small|pinky|pinkie|fifth|baby) toes?(?! side)\b|\bpinky\b/g, zone: 'U3' },
    { words: /\bbunions?\b|\bbig toe joint\b/g, zone: 'U2' },
    { words: /\bmudguard\b/g, zone: 'U3', inner: 'U2' },
    {
      words:
        /\btoe ?nails?\b|\bnails?\b|\btips? of (?:the|my) toes?\b|\btoe ?tips?\b|\btoe (?:cap|bumper)\b/g,
      zone: 'U1',
    },
    { words: /\btoe ?box\b/g, zone: 'U3', inner: 'U2', outer: 'U3' },
    {
      words:
        /\b(?:top|tops) of (?:the|my) toes\b|\bvamp\b|\btoe break\b|\bflex (?:line|point|zone)\b|\bknuckles?\b|\bwhere (?:it|the (?:shoe|upper)) (?:bends|creases|flexes)\b/g,
      zone: 'U4',
    },
    { words: /\btoes?\b(?! ?(?:box|side|off|spring))/g, zone: 'P2' },
    {
      words:
        /\bball(?:s)?(?: of (?:the|my|each|both)(?: \w+)? (?:foot|feet))?\b|\bforefoot\b|\bforefeet\b|\bmetatarsals?\b/g,
      ...{ zone: 'P4', inner: 'P3', outer: 'P5' },
    },
    { words: /\bmid-?foot\b/g, zone: 'P6', inner: 'U6', outer: 'P7' },
    { words: /\barch(?:es)?\b/g, zone: 'P6' },
    {
      words:
        /\binsteps?\b|\btop of (?:the|my|both|each)(?: \w+)? f(?:oo|ee)t\b|\btongues?\b|\beyelets?\b|\beyestay\b|\bthroat\b/g,
      zone: 'U5',
    },
    { words: /\bachilles\b|\btendon\b|\bheel (?:tab|notch)\b|\bback collar\b/g, zone: 'U9' },
    { words: /\bankles?\b|\bcollars?\b|\btop ?line\b|\bmalleol\w+\b/g, zone: 'U8' },
    {
      words: /\bheel (?:cup|counter)s?\b|\bcounter\b|\bback of (?:the|my)(?: \w+)? heels?\b/g,
      zone: 'U10',
    },
    { words: /\bheels?\b/g, zone: 'U10', inner: 'P8', outer: 'P9', under: 'P9' },
  ],
  kinds: [
    {
      words:
        /\bheels? ?-?(?:slip\w*|lift\w*|slid\w*)\b|\b(?:slip\w*|lift\w*|slid(?:es?|ing)|pop\w*|ris(?:es?|ing)|com(?:es?|ing) (?:up|out|off)|pump\w*|pull\w* out|up and down)\b/g,
      ...{
        kind: 'heel-slip',
        zone: 'U10',
        beside: heel,
        unless: /\b(?:tongue|collar|lace|(?:out|in|mid)?sole)s?\b/,
      },
    },
    {
      words:
        /\blaces? ?-?bit(?:es?|ing)\b|\b(?:press\w*|dig\w*|cut\w*|bit(?:es?|ing)|hurt\w*|strangl\w*|pinch\w*)\b/g,
      ...{ kind: 'lace-bite', zone: 'U5', beside: /\b(?:laces?|lacing)\b/ },
    },
    {
      words:
        /\b(?:bang\w*|hit(?:s|ting)?|bump\w*|jam\w*|stub\w*|knock\w*|slam\w*|touch\w*|strik\w*|ram\w*)\b|\bblack (?:toe ?)?nails?\b|\b(?:toe ?)?nails? (?:\w+ ){0,2}(?:black|blue|bruised)\b|\b(?:into|against) the (?:front|end|tip)\b/g,
      ...{ kind: 'toe-bang', zone: 'U1', beside: /\b(?:toes?|nails?|toe ?nails?)\b/ },
    },
    {
      words: /\b(?:press\w*|push\w*|pok\w*|dig\w*|bumps?|lumps?|jab\w*|squeez\w*)\b/g,
      ...{ kind: 'arch-pressure', zone: 'P6', beside: /\barch(?:es)?\b/ },
    },
    {
      words:
        /\bnumb\w*|\btingl\w*|\bpins and needles\b|\b(?:fell|falls?|fallen|went|go(?:es)?) (?:asleep|dead|to sleep)\b|\b(?:no|lost|losing|lose) (?:all )?(?:the )?feeling\b/g,
      kind: 'numbness',
    },
    {
      words: /\bhot ?-?spots?\b|\bburn\w*|\bhot under\b|\bblister\w*|\bon fire\b/g,
      kind: 'hot-spot',
    },
    {
      words:
        /\brub\w*|\bchaf\w*|\bscrap(?:es?|ed|ing)\b|\bscratch\w*|\bgraz\w*|\bsandpaper\b|\braw\b|\bskin (?:is |was )?(?:off|broken)\b/g,
      kind: 'rubbing',
    },
    {
      words:
        /\b(?:feel|felt|notice|noticed)\b(?: \w+){0,3} (?:edge|seam|ridge|lip|stitching)\b|\b(?:edges?|seams?|ridges?|lip|stitching)\b(?: \w+){0,4} (?:sharp|hard|stiff|digs?|cuts?|cutting|digging)\b|\b(?:sharp|hard|stiff) (?:edges?|seams?|ridges?|lip)\b/g,
      kind: 'harsh-edge',
    },
    {
      words: /\b(?:slip\w*|slid(?:es?|ing)?|skid\w*|slick)\b/g,
      kind: 'slipping',
      beside:
        /\b(?:wet|ice|icy|grass|gravel|roads?|leaves|metal|cobble\w*|manhole\w*|corners?|rocks?|mud\w*|paint\w*|ground|descents?|tiles?|bridge|rain|traction|grip|tread|outsole)\b/,
    },
    {
      words:
        /\b(?:no|little|poor|bad|lost|less|lacks?|lose|losing|not (?:much|enough)) (?:\w+ )?(?:grip|traction)\b|\bgrip (?:is|was) (?:\w+ )?(?:bad|poor|gone|weak)\b|\bslippery\b|\bskid\w*/g,
      kind: 'slipping',
    },
    {
      words:
        /\bbottom\w*[- ]?out\b|\bbottoms\b|\b(?:feel|felt|notice|noticed) (?:\w+ )?(?:ground|road|pavement|stones? through)\b|\b(?:feels?|felt|is|are|gone|went|goes) (?:\w+ )?(?:flat|dead)\b|\bpacked (?:out|down)\b|\b(?:no|little) (?:cushion\w*|bounce|foam)\b|\bcollaps\w*|\bcompressed\b/g,
      kind: 'bottoming-out',
    },
    {
      words:
        /\bharsh\w*|\bjarr\w*|\bjolt\w*|\b(?:hits?|lands?|landing|landed|strikes?) (?:\w+ )?(?:hard|heavy|heavily)\b|\b(?:too|very|really|rather|so|quite) (?:hard|firm)\b|\bhard landing\w*|\blike (?:concrete|a board|wood|a rock|a brick)\b|\bunforgiving\b|\bshocks?\b/g,
      kind: 'harsh',
      unless: /\bstiff|\bedge/,
    },
    {
      words:
        /\bunstable|\binstability\b|\bwobbl\w*|\btipp(?:y|ing)\b|\brolls? (?:in|out|over|inwards?|outwards?)\b|\brolling (?:in|out|over)\b|\brolled (?:my|over|in|out)\b|\bsway\w*|\bunsteady\b|\bnot (?:very )?stable\b|\bturn(?:ed|s)? my ankle\b|\bshaky\b/g,
      kind: 'unstable',
    },
    {
      words:
        /\bsweat\w*|\boverheat\w*|\bhot feet\b|\bstuffy\b|\bsteam\w*|\boven\b|\bsauna\b|\bboil\w*|\bsoak\w*|\b(?:too|very|really|so|was|were|got|get|gets|are|is|run|ran) (?:warm|hot)\b|\bsocks? (?:\w+ ){0,3}wet\b/g,
      kind: 'overheating',
    },
    {
      words:
        /\b(?:too )?tight\w*|\bnarrow\b|\bcramp\w*|\bcramm\w*|\bsquash\w*|\b(?:no|little|not enough) (?:room|space)\b|\btoo (?:small|snug)\b|\bconstrict\w*/g,
      kind: 'too-tight',
    },
    {
      words:
        /\bloose\w*\b|\bslopp\w*|\btoo (?:wide|big|roomy|large)\b|\bswim\w*|\btoo much (?:room|space)\b|\b(?:slid\w*|mov\w*) (?:around|about)\b|\bbaggy\b|\bfloppy\b/g,
      kind: 'too-loose',
      unless: /\blaces? (?:\w+ ){0,2}loose|\bbreath/,
    },
    {
      words:
        /\bpress\w*|\bsqueez\w*|\bpinch\w*|\bdig(?:s|ging)?\b|\bdug\b|\bpok(?:es?|ed|ing)\b|\bjab\w*|\bpush(?:es|ing|ed)? (?:on|into|against)\b|\blump\b/g,
      kind: 'pressure',
    },
    {
      words:
        /\bstiff\w*|\b(?:not|won't|n't|hard to|barely|hardly|refuses to) (?:bend|flex)\b|\brigid\b|\bplank\b/g,
      kind: 'stiff',
    },
    {
      words:
        /\bcatch(?:es|ing)?\b|\bcaught\b|\btrip(?:s|ped|ping)?\b|\bstumbl\w*|\bsnag\w*|\bscuff\w*/g,
      kind: 'catching',
      unless: /\beye\b|\bcaught (?:in|up)\b/,
    },
    {
      words:
        /\bsqueak\w*|\bcreak\w*|\bclick\w*|\bnois\w*|\bslapp?\w*|\bloud\b|\bsquelch\w*|\bclack\w*|\brattl\w*|\bclunk\w*/g,
      kind: 'noise',
    },
    {
      words:
        /\b(?:stones?|sand|grit|pebbles?|dirt|debris|twigs?|thorns?|gravel|mud|snow)\b(?: \w+){0,3} (?:in|inside|into|stuck|under)\b|\b(?:empty|emptied|shake|shook|picked|collects?|collected|scoops?)\b(?: \w+){0,4} (?:stones?|sand|grit|pebbles?|dirt|gravel)\b|\bdebris\b|\bgrit\b/g,
      kind: 'debris',
    },
    {
      words:
        /\bpain\w*|\bhurt\w*|\bsore\w*|\bach(?:es?|ed|ing|y)\b|\bstab\w*|\btender\b|\bagony\b|\bthrob\w*/g,
      kind: 'pain',
    },
  ],
};
