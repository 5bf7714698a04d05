"""Swedish: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": "badstege|badstegen|stege|stegen|stegar|badstegar|badsteg|akterstege|teleskopstege|teleskopstegen",
    "O_PLATFORM": "badplattform|plattform|badbrygga|badplattformen|plattformen|badbryggan|akterplattform",
    "O_DAVITS": "dävertar|dävert|dävertarna|dävertar för jolle|dävert*|jolledävertar",
    "O_OUTBOARD": (
        "utombordare|utombordsmotor|utombordsfäste|utombordaren|utombordarfäste|utombordsmotorn|aktersnurra|"
        "snurra|aktersnurran|motorfäste|utombordsfästet"
    ),
    "O_EXHAUST": "avgasrör|avgasutlopp|avgasröret|avgas|avgasutsläpp|avgasgenomföring",
    "O_RAIL": (
        "akterstol|häckpulpit|häckpulpiten|akterpulpeten|akterpulpit|pushpit|pulpit|akterpulpiten|akterräcke|"
        "räcke|räcket|akterstolpar|sargräcke|aktersarg"
    ),
    "O_STAY": "akterstag|akterstaget|akterstagen|dubbla akterstag|delat akterstag|häckstag|akterstagets|backstag",
    "O_BOOM": "mesanbom|bom|mesanbommen|storbom|bomnock|bommen|storbommen",
    "O_ARCH": "targabåge|akterbåge|targabågen|targa|båge|bågen|akterportal|portal|radarbåge",
    "O_PANELS": "solpaneler|solpanel|solceller|solcellspanel|solcellspaneler|solcell*|solpanelerna",
    "O_MAST": "radarmast|vindgenerator|vindkraftverk|vindsnurra|radarstolpe|antennmast|radarmasten",
    "O_STAFF": "flaggspel|flaggstång|flaggspelet|flaggstången",
    "O_PASSERELLE": "landgång|landgången|gångway|passerelle",
    "O_BOOMKIN": "driverbom|akterspröt",
    "O_LOCKER": "gasolbox|livflotte|akterbox|stuvfack akter",
    "FOLD": (
        "att fälla upp|att fälla|fälls undan|bortfällbar|fällbar|fällbart|uppfällbar|vikbar|fällbara|uppfällbart|"
        "nedfällbar|nerfällbar|hopfällbar|går att fälla|fälls upp|kan fällas|vikbart|vikbara|uppvikbar|"
        "fäller upp|ihopfällbar|fälls|kan fällas upp|som fälls upp|nedfällbart"
    ),
    "FIXED": (
        "fast|fast monterad|svetsad|fasta|fastmonterad|fastskruvad|bultad|svetsat|stel|fastsvetsad|fastbultad|"
        "ej fällbar|skruvad"
    ),
    "REMOVE": (
        "kan vara utan|klara oss utan|klarar oss utan|kan flyttas undan|går att flytta|monteras bort|"
        "tas bort vid behov|demonterbar|kan tas bort|löstagbar|tas bort|får tas bort|gärna tas bort|"
        "kan plockas bort|kan monteras bort|kan avlägsnas|avtagbar|demonterbart|demonteras|går att ta bort|"
        "kan demonteras|borttagbar|kan flyttas|kan tas av|ta bort|monteras av|går att demontera|löstagbart|"
        "kan lossas|får gärna tas bort"
    ),
    "KEEP": (
        "sitter kvar|fortsätta använda|kunna använda|vill vi inte ta bort|vill jag inte ta bort|måste vara kvar|"
        "ska vara kvar|behålla|måste sitta kvar|ska sitta kvar|vill behålla|vill vi behålla|vill ha kvar|"
        "måste finnas kvar|vara kvar|sitta kvar|bli kvar|den ska vara kvar|måste behållas|får inte tas bort|"
        "kan inte tas bort|skall vara kvar|ha kvar|skall behållas|går inte att ta bort|vill jag behålla|"
        "ska behållas"
    ),
    "PORT": "babord|babords|babords sida|babordssidan|bb|om babord|på babord|vänster|babordssida|vänster sida",
    "STARBOARD": (
        "styrbord|styrbords|styrbords sida|styrbordssidan|sb|om styrbord|på styrbord|höger|styrbordssida|höger sida"
    ),
    "CENTRE": (
        "centrum|mitten|mittlinjen|från centrum|midskepps|mitt på|mitt|från mitten|centrumlinjen|i mitten|"
        "centralt|mittlinje|från mittlinjen|mitten av|midskeppslinjen"
    ),
    "EACH_SIDE": "på varje sida|på båda sidor|på vardera sidan|ett på varje sida|båda sidorna|på bägge sidor",
    "PREFER": (
        "om möjligt|om det går|helst|föredrar|vill helst|skulle helst|föredra|gärna på|önskar|önskemål|hellre|"
        "vi vill ha|föredras|helst på"
    ),
    "SLIDE": "teleskop|utdragbar|utdragbart|teleskopisk|skjutbar",
    "SWING": "svängbar|vridbar",
    "AVOID": "undvika|absolut inte|helst inte|undviker|inte gärna|slippa",
    "GONE": (
        "såld|har vi sålt|har jag sålt|sålde|är redan borta|är bortmonterad|bortmonterad|i stickbacken|"
        "i en stickback|i stuvfacket|stuvad|stuvas|förvaras|ligger i en|ligger hemma|står hemma|är borttagen|"
        "är borta|togs bort|har vi tagit bort|har jag tagit bort|tog vi bort|tog jag bort|är demonterad|"
        "finns inte kvar"
    ),
    "BESIDE": "bredvid|intill|nära|vid sidan av|invid",
    "BEGIN": "börjar|med början",
    "EXCEPT": "utom|förutom|bortsett från|bara|endast",
}
