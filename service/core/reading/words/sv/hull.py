"""Swedish: the stern, the rudder, what she is built of and who she is."""

WORDS = {
    "TRANSOM": (
        "kanten på spegeln|spegelkanten|akterspegelns kant|akterspegel|spegel|spegeln|akterspegeln|aktern|"
        "spegelns|akterspegel*|akterspegelns|akter|akterns|spegelns överkant|akterspegelns överkant|"
        "botten av spegeln|akterspegelns underkant|spegelns underkant|spegelns lutning|lutningen på spegeln|"
        "spegelns bredd|lodrät akterspegel|rak akterspegel|negativ akterspegel|negativ spegel|omvänd spegel|"
        "akterskepp|akterskeppet|akterkant båt|spegelplan|spegelytan|båtens akter|akterdel|aktergavel|"
        "spegelbrädan|spegelkant|akterspegelkanten|spegelöverkant|akterspegelöverkant|akterspegelunderkant|häck|"
        "häcken|rumpan|sättsteg"
    ),
    "POST": (
        "stävens topp|stävtoppen|akterstävens topp|akterstäv|akterstäven|akterstäv*|stäven|stävens|rorstäven|"
        "toppen av stäven"
    ),
    "HULL": (
        "bordläggningen|plåten|plåt|skrov|skrovet|skrovets|bordläggning|laminat|skrovets laminat|plank|plankor|bordgång"
    ),
    "BOAT": (
        "båt|båten|segelbåt|segelbåten|yacht|slup|ketch|båtar|båtmodell|kölbåt|båtens|aluminiumbåt|stålbåt|"
        "träbåt|plastbåt"
    ),
    "PLUMB": (
        "är rak|är lodrät|lodrät|lodrät akterspegel|vertikal|lodrätt|lodräta|rak akterspegel|vertikalt|lodräkt|"
        "upprätt|nästan lodrät|helt lodrät|i princip lodrät|så gott som lodrät|nästan vertikal|rakt upp och ner|"
        "spikrak|helt vertikal|utan lutning|ingen lutning|lodrätta|rakt upp och ned|nästan lodrätt|i lod|"
        "lodrättstående|praktiskt taget lodrät|helt rak|noll grader|rak som en vägg|står rakt"
    ),
    "REVERSE": (
        "negativ|negativ akterspegel|negativ spegel|negativt|negativ lutning|negativt lutande|omvänd|"
        "omvänd spegel|inåtlutande|negativa|framåtlutande|föröverlutande|lutar föröver|lutar framåt|"
        "negativt spegel|invändig lutning|bakvänd|omvänt|omvänd lutning|inåtlutad|negativ lutande|negativ akter|"
        "omvänd akterspegel|lutar inåt|inverterad"
    ),
    "COUNTER": (
        "överhäng|klassisk akter|positiv|positivt|positiv lutning|överhängande|klassisk akterspegel|"
        "klassiskt överhäng|utåtlutande|klassisk spegel|traditionell akter|vanlig akterspegel|normal akter|"
        "bakåtlutande|akterlutande|akteröverlutande|positiv akterspegel|positiv spegel|långt överhäng|"
        "lutar akteröver|lutar bakåt|överhängen|akterligt överhäng|utåtlutad|traditionell spegel"
    ),
    "SCOOP": (
        "ingjuten i skrovet|ingjutet i skrovet|gjuten i skrovet|inbyggd i skrovet|integrerad i skrovet|"
        "gjuten i ett med skrovet|badtrappa i aktern|badtrappa|ingjutet badsteg|badsteg i aktern|"
        "inbyggd badplattform|integrerad badplattform|ingjuten badplattform|trappakter|ingjutna steg|badtrapp|"
        "akter med badsteg|badtrappor|ingjuten badtrappa|inbyggt badsteg|integrerat badsteg|trappa i aktern|"
        "akter med trappa|inbyggd badtrappa|ingjuten plattform|trappsteg i aktern|scoop|sockerskopa|"
        "ingjutna trappsteg|integrerad badtrappa|trappsteg i akterspegeln|badplattform ingjuten|"
        "gjuten badplattform|ingjuten trappa|inbyggda trappsteg"
    ),
    "OPEN": (
        "öppen akter|öppen spegel|öppet akterskepp|öppen akterspegel|nedfällbar akterspegel|fällbar akterspegel|"
        "nerfällbar akterspegel|aktern är öppen|utan akterspegel|öppen sittbrunn|fällbar spegel|öppen baktill|"
        "helt öppen akter|öppet akterut|nedfällbar akter|akterspegeln fälls ner|aktern fälls ner|fällbar akter|"
        "öppen i aktern|fälls ner till badplattform|akterspegeln går att fälla|nerfällbar spegel|"
        "uppfällbar akterspegel|öppen sittbrunn akterut|akterdörr|ingen akterspegel|öppningsbar akterspegel|"
        "spegeln fälls"
    ),
    "DOUBLE": (
        "spetsgattad|spetsgattare|kanotakter|dubbelspetsad|spetsgatt|spetsgattaren|kanotstäv|spetsig akter|"
        "dubbeländare|koster|kosterbåt|kosterakter|spetsakter|spetsgattat|spetsig i båda ändar|spetsig bak|"
        "kanotakterbåt|spetsgattade|kanotformad akter|colin archer|dubbelspetsade|spetsgattsbåt|spetsgattskoster|"
        "spetsaktrad|spetsig båda ändar|kryssarakter|kosterakterskepp"
    ),
    "RUDDER": (
        "rodret hänger på kölens bakkant|rodret hänger på kölen|rodret hänger på skäddan|rodrets underkant|"
        "roderunderkant|rodrets nederkant|rodrets topp|roderhuvud|roderhuvudet|rodertopp|rodertoppen|"
        "toppen av rodret|rodrets överkant|roder|rodret|roderblad|rodrets|roderbladet|huvudroder|dubbla roder|"
        "två roder|huvudrodret|rodrets bakkant|bakkanten på rodret|fribärande roder|påhängt roder|"
        "utanpåliggande roder|akterhängt roder|utombords roder|rodret hänger på|båtens roder|roderbladets|"
        "huvudrodrets|roderbladen|rodren|roderkanten|rodrens|rodrets blad|bladet|bladets|utvändigt roder|"
        "halvbalanserat roder"
    ),
    "HUNG_OUT": (
        "påhängt roder|akterhängt|påhängt|utombordsroder|utanpåliggande roder|akterhängt roder|"
        "hängt på akterspegeln|på akterspegeln hängt|hänger på akterspegeln|hänger på spegeln|hängt på spegeln|"
        "akterspegelhängt|utanpåhängt|hänger på akterstäven|hängt på akterstäven|utombords roder|utanpåliggande|"
        "aktermonterat|rodret hänger på|hänger utanpå|utvändigt roder|hänger i akterspegeln|hänger bak|"
        "hänger i spegeln|monterat på akterspegeln|monterat på spegeln|fäst i akterspegeln|fäst i spegeln|"
        "fäst på spegeln|hängt akterut|hängt bak|hänger akterut|akterhängda|i fingerlingar|fingerlingar|"
        "utanpå spegeln|utanpå akterspegeln|utombords|sitter på akterspegeln|sitter på spegeln|"
        "hängt i akterspegeln|hängt utanpå|spegelhängt|utanpåliggande på spegeln|påhängda|akterhängande|"
        "upphängt på akterspegeln|upphängt på spegeln|fällroder|hängande på akterspegeln|sitter utanpå|"
        "upphängt i akterspegeln"
    ),
    "HUNG_IN": (
        "rodret hänger på kölens bakkant|rodret hänger på kölen|rodret hänger på skäddan|på kölens bakkant|"
        "hänger på kölen|hängt på kölen|på kölen|i kölens bakkant|vid kölens bakkant|på kölens akterkant|"
        "spadrod*|skeggrod*|skegrod*|spadroder|balansroder|balanserat spadroder|fribärande roder|halvbalanserat|"
        "frihängande|skäddroder|på skeg|hänger bakom kölen|skäddhängt|på skädda|halvskädda|spadeformat|"
        "balanserat|halvskäddat|helskädda|hängt bakom kölen|bakom kölen|på kölen hängt|kölhängt|underhängt|"
        "underhängande|hänger i kölen|frihängande spadroder|bakom en skädda|bakom skäddan|med skädda|"
        "halvbalanserat roder|spadroderet|kölroder|spadrodret|fribärande spadroder|fäst i kölen|"
        "i kölens akterkant|på en skädda|på en halvskädda|spadroder på|bakom långkölen|bakom den långa kölen|"
        "i långkölens bakkant"
    ),
    "UNDER": (
        "på kölen|i kölens bakkant|under båten|skädda|på skädda|under skrovet|skeg|under aktern|hänger under|"
        "inombords|fribärande|frihängande|skäddan|under skrovets|inunder|helt under|under sittbrunnen|"
        "under spegeln|sitter under|är under|sitter inunder"
    ),
    "TRAILING": (
        "bakkant|bakkanten|akterkant|rodrets bakkant|bakre kant|bakre kanten|bakkanten på rodret|"
        "roderbladets bakkant|aktre kant|akterkanten|roderbladets akterkant|rodrets akterkant|akterände|"
        "bakersta kanten|akterligaste kanten|bakersta delen|bakersta punkten|akterligaste punkten|roderkant|"
        "bakkanterna|bakkant roder|akterkant roder|rodrets bakre kant|aktersta kanten|bakre änden|aktersida|"
        "bakända|bakdelen"
    ),
    "STOCK": (
        "roderstock|roderstocken|hjärtstock|hjärtstocken|roderaxel|roderaxeln|hjärtstockens|"
        "hjärtstockens centrum|roderstockens|rodrets axel|rodrets rotationsaxel|vridaxel|vridningsaxel|"
        "roderaxelns|centrum hjärtstock|rodrets vridaxel|rorstock"
    ),
    "GRP": (
        "massiv glasfiber|glasfiberplast|glasfiber|polyester|plast|gfk|grp|armerad plast|glasfiberarmerad|"
        "laminat|glasfiberarmerad plast|plastbåt|glasfiberbåt|gap|frp|vinylester|epoxi|glasfiberskrov|plastskrov|"
        "glasfiberlaminat|glasfibern"
    ),
    "SOLID": (
        "massiv|massiv glasfiberplast|enkellaminat|massivt|massivlaminat|enkellaminerad|solid|massiv plast|"
        "massivt laminat|helglas|homogen|homogent|massivlaminerad|homogent laminat|homogen glasfiber|"
        "enkelt laminat|enkelskal|ej sandwich|inte sandwich|utan kärna|massiv glasfiberarmerad|handuppläggning|"
        "handupplagd|utan sandwich|massiv polyester|solitt|solid laminat|massivt glasfiber|helt massiv|helplast|"
        "handlaminerad|massiva|utan distansmaterial|enskikts|ingen sandwich|inget distansmaterial|massiv gfk"
    ),
    "CORED": (
        "sandwich|balsa|distansmaterial|balsakärna|sandwichkonstruktion|skum|divinycell|kärna|distanslaminat|"
        "sandwichlaminat|skumkärna|airex|pvc skum|kärnmaterial|balsakärnan|sandwich med balsa|sandwichbyggd|"
        "kanalplast|bikupekärna|coremat|balsa sandwich|skumsandwich|balsasandwich|cellplast|cellplastkärna|"
        "distanskärna|sandwichskrov|kärna av balsa|kärna av skum|sandwichbygge|med kärna"
    ),
    "WOOD": (
        "träbåten|furubåt|trä|mahogny|träbåt|av trä|i trä|ek|mahogny på ek|kravellbyggd|plywood|furu|lärk|"
        "klinkbyggd|träskrov|träkonstruktion|mahognybåt|ek och mahogny|marinplywood|trä epoxi|furu på ek|"
        "lärk på ek|i mahogny|av mahogny|oregon|ribblimmad|limträ|formlimmad|plywoodbåt|kravellbyggd i|av ek|"
        "av furu|teakbåt|trä/epoxi|byggd i trä|byggd av trä|träbyggd|skrov av trä|skrov i trä"
    ),
    "ALU": (
        "aluminium|alu|aluminiumskrov|av aluminium|i aluminium|aluminiumbåt|aluminiumbåten|alubåt|aluskrov|"
        "lättmetall|aluminiumplåt|byggd i aluminium|byggd av aluminium|skrov av aluminium|skrov i aluminium|"
        "aluminiumbyggd|sjöaluminium"
    ),
    "STEEL": (
        "stål|stålbåt|av stål|stålskrov|i stål|stålbåten|stålplåt|byggd i stål|stålbyggd|svetsat stål|stålketch|"
        "stålslup|byggd av stål|skrov av stål|skrov i stål|stålkonstruktion|stålskuta|cortenstål|skeppsplåt"
    ),
    "YEAR": (
        "från|byggd|årsmodell|byggår|byggt|byggd år|tillverkad|sjösatt|sjösattes|från år|tillverkningsår|"
        "modellår|årgång|av år|byggd i|byggd på"
    ),
    "HULL_NUMBER": "skrovnummer|byggnummer|skrov nr|båtnummer|skrovnr|bygg nr|tillverkningsnummer|båt nr",
    "BUILDER": "varv|tillverkare|varvet|båtbyggare|byggare|byggd av|båtvarv",
    "MODEL": "modell|båt|typ|båttyp|båtmodell|båtmärke|märke och modell|modellen",
}
