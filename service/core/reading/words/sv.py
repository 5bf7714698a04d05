"""Swedish."""

from __future__ import annotations

from service.core.reading.lexis import Numbers, Vocabulary

VOCABULARY = Vocabulary(
    language="sv",
    common="och är det en ett på av för med vi jag har som till från att inte den om kan hej vår ert er måtten här "
    "vilket hur båten sitter över under också var vill ska skulle hans hon mot efter utan där eller mycket måste "
    "får ligger",
    numbers=Numbers(
        ones="noll en/ett två tre fyra fem sex sju åtta nio tio elva tolv tretton fjorton femton sexton sjutton arton "
        "nitton",
        tens="tjugo trettio fyrtio femtio sextio sjuttio åttio nittio",
        joint="{ten}{one}",
        hundred="hundra",
        half="halv/halva/halvt",
        and_="och",
        whole="halvannan=1.5 en_och_en_halv=1.5 ett_och_ett_halvt=1.5 {one}_och_en_halv=+0.5 trekvarts=0.75",
    ),
    concepts={
        "M_TAPE": "måttband|måttbandet|tumstock|tumstocken|meterband|rullmått|mätt med måttband",
        "TRANSOM": "kanten på spegeln|spegelkanten|akterspegelns kant|"
        "akterspegel|spegel|spegeln|akterspegeln|aktern|spegelns|akterspegel*|akterspegelns|akter|akterns|"
        "spegelns överkant|akterspegelns överkant|botten av spegeln|akterspegelns underkant|spegelns underkant|"
        "spegelns lutning|lutningen på spegeln|spegelns bredd|lodrät akterspegel|rak akterspegel|"
        "negativ akterspegel|negativ spegel|omvänd spegel",
        "POST": "stävens topp|stävtoppen|akterstävens topp|"
        "akterstäv|akterstäven|akterstäv*|stäven|stävens|rorstäven|toppen av stäven",
        "TOP": "stävens topp|stävtoppen|akterstävens topp|"
        "kanten på spegeln|spegelkanten|akterspegelns kant|"
        "till däck|upp till däck|"
        "går upp till|når upp till|"
        "överkant|överkanten|ovankant|överkanten av|överdel|övre kant|övre kanten|överkantens|upptill|ovansida|"
        "toppen|däckskanten|uppe|högst upp|spegelns överkant|akterspegelns överkant|överkantens läge|topp|"
        "toppen av stäven|toppen av akterstäven|bredd upptill",
        "BOTTOM": "går ner till|går ned till|"
        "underkant|underkanten|nederkant|nederkanten|nedre kant|nedre kanten|nedtill|underdel|botten av spegeln|"
        "undersida|längst ner|längst ned|nederst|akterspegelns underkant|spegelns underkant|nertill",
        "WATER": "vattenlinjen|vattenlinje|vattnet|vatten|vattenytan|vattenyta|vattennivån|vl|kvl|vattenlinjens|ytan|"
        "konstruktionsvattenlinjen|fribord|under vattnet|under vattenlinjen|under vattenytan|under vl|"
        "under vattenlinje|i vattnet|under ytan|precis i vattenlinjen|i vattenlinjen|vid vattenlinjen|"
        "nuddar vattnet|precis vid vattenytan|i vattenytan|på vattenlinjen",
        "TOERAIL": "fotlist|fotlisten|relingslist|relingslisten|brädgång|skarndäck|avbärarlist|tålist",
        "STEP": "badsteg|trappsteg|badsteget|trappsteget|ingjutet steg|badtrappa|steg",
        "HULL": "bordläggningen|plåten|plåt|skrov|skrovet|skrovets|bordläggning|laminat|skrovets laminat",
        "BOAT": "båt|båten|segelbåt|segelbåten|yacht|slup|ketch|båtar|båtmodell|kölbåt|båtens",
        "HEIGHT": "höjd|höjden|hög|höjd över|fribord|högt",
        "WIDTH": "bredd|bredden|bred|brett|breda|på bredden|bredd upptill|spegelbredd|spegelns bredd",
        "THICK": "tjocklek|tjock|tjockleken|tjockt|tjocka|godstjocklek|skrovtjocklek|laminattjocklek|plåttjocklek",
        "LOA": "längd|längden|längd över allt|löa|båtens längd|l ö a|total längd|skrovlängd|längd ö a",
        "LWL": "lvl|vattenlinjelängd|längd i vattenlinjen|längd vl|lwl",
        "BEAM": "största bredd|båtens bredd|bredd max|max bredd|maxbredd|största bredden",
        "DRAFT": "djupgående|djup|djupgåendet|sticker djupt|går djupt",
        "DISPLACEMENT": "deplacement|vikt|väger|deplacementet|vikten|deplacerar|vägs|väga|tung|total vikt|båtvikt|båtens vikt|"
        "kranen|vägdes|lastad vikt",
        "BALLAST": "ballast|köl|motor|jolle|kölen|kölvikt|motorn|jollen|ankare|besättning",
        "RAKE": "lutning|vinkel|lutningen|lutningsvinkel|vinkeln|spegelns lutning|gradtal|lutningen på spegeln|"
        "spegellutning",
        "LEAN": "lutar|lutande|lutat|luta|faller|sluttar|snedställd|lutad|snedställt|vinklad",
        "FORWARD": "för om|förut|förom|framåt|föröver|längst förut|framför|längre fram|längre förut|förligare|mot fören|"
        "längre föröver|framom|framför akterspegeln",
        "AFT": "akterut|akteröver|längst akterut|bakåt|akter om|bakom|längre bak|längre akterut|akterligare|mot aktern|"
        "akterom|akterut från|längre akteröver|utanför spegeln|akter därom|akterifrån",
        "PLUMB": "är rak|är lodrät|"
        "lodrät|lodrät akterspegel|vertikal|lodrätt|lodräta|rak akterspegel|vertikalt|lodräkt|upprätt|"
        "nästan lodrät",
        "REVERSE": "negativ|negativ akterspegel|negativ spegel|negativt|negativ lutning|negativt lutande|omvänd|"
        "omvänd spegel|inåtlutande|negativa",
        "COUNTER": "överhäng|klassisk akter|positiv|positivt|positiv lutning|överhängande|klassisk akterspegel|"
        "klassiskt överhäng|utåtlutande",
        "SCOOP": "badtrappa i aktern|badtrappa|ingjutet badsteg|badsteg i aktern|inbyggd badplattform|"
        "integrerad badplattform|ingjuten badplattform|trappakter|ingjutna steg|badtrapp|akter med badsteg",
        "OPEN": "öppen akter|öppen spegel|öppet akterskepp|öppen akterspegel|nedfällbar akterspegel|fällbar akterspegel|"
        "nerfällbar akterspegel|aktern är öppen|utan akterspegel|öppen sittbrunn|fällbar spegel",
        "DOUBLE": "spetsgattad|spetsgattare|kanotakter|dubbelspetsad|spetsgatt|spetsgattaren|kanotstäv|spetsig akter|"
        "dubbeländare|koster|kosterbåt|kosterakter|spetsakter",
        "RUDDER": "roder|rodret|roderblad|rodrets|roderbladet|huvudroder|dubbla roder|två roder|huvudrodret|"
        "rodrets bakkant|bakkanten på rodret|fribärande roder|påhängt roder|utanpåliggande roder|"
        "akterhängt roder|utombords roder|rodret hänger på",
        "HUNG_OUT": "påhängt roder|akterhängt|påhängt|utombordsroder|utanpåliggande roder|akterhängt roder|"
        "hängt på akterspegeln|på akterspegeln hängt|hänger på akterspegeln|hänger på spegeln|hängt på spegeln|"
        "akterspegelhängt|utanpåhängt|hänger på akterstäven|hängt på akterstäven|utombords roder|utanpåliggande|"
        "aktermonterat|rodret hänger på|hänger utanpå",
        "HUNG_IN": "spadrod*|skeggrod*|skegrod*|"
        "spadroder|balansroder|balanserat spadroder|fribärande roder|halvbalanserat|frihängande|skäddroder|"
        "på skeg|hänger bakom kölen|skäddhängt|på skädda|halvskädda",
        "UNDER": "på kölen|i kölens bakkant|"
        "under båten|skädda|på skädda|under skrovet|skeg|under aktern|hänger under|inombords|fribärande|"
        "frihängande|skäddan|under skrovets",
        "TRAILING": "bakkant|bakkanten|akterkant|rodrets bakkant|bakre kant|bakre kanten|bakkanten på rodret|"
        "roderbladets bakkant|aktre kant|akterkanten",
        "STOCK": "roderstock|roderstocken|hjärtstock|hjärtstocken|roderaxel|roderaxeln|hjärtstockens",
        "STICK_OUT": "sticker ut|sticker|skjuter ut|sticker bakåt|utstick|går ut",
        "TURN": "åt varje håll|åt vardera hållet|roderutslag|åt vardera sidan|till varje sida|åt båda håll|per sida|"
        "max utslag|utslag|till vardera sidan|vardera håll",
        "GRP": "massiv glasfiber|"
        "glasfiberplast|glasfiber|polyester|plast|gfk|grp|armerad plast|glasfiberarmerad|laminat",
        "SOLID": "massiv|massiv glasfiberplast|enkellaminat|massivt|massivlaminat|enkellaminerad|solid|massiv plast|"
        "massivt laminat|helglas|homogen|homogent",
        "CORED": "sandwich|balsa|distansmaterial|balsakärna|sandwichkonstruktion|skum|divinycell|kärna|distanslaminat|"
        "sandwichlaminat|skumkärna",
        "WOOD": "trä|mahogny|träbåt|av trä|i trä|ek|mahogny på ek|kravellbyggd|plywood|furu|lärk|klinkbyggd",
        "ALU": "aluminium|alu|aluminiumskrov|av aluminium",
        "STEEL": "stål|stålbåt|av stål|stålskrov|i stål",
        "O_LADDER": "badstege|badstegen|stege|stegen|stegar|badstegar|badsteg|akterstege|teleskopstege|teleskopstegen",
        "O_PLATFORM": "badplattform|plattform|badbrygga|badplattformen|plattformen|badbryggan|akterplattform",
        "O_DAVITS": "dävertar|dävert|dävertarna|dävertar för jolle|dävert*|jolledävertar",
        "O_OUTBOARD": "utombordare|utombordsmotor|utombordsfäste|utombordaren|utombordarfäste|utombordsmotorn|aktersnurra|"
        "snurra|aktersnurran|motorfäste|utombordsfästet",
        "O_EXHAUST": "avgasrör|avgasutlopp|avgasröret|avgas|avgasutsläpp|avgasgenomföring",
        "O_RAIL": "akterstol|"
        "häckpulpit|häckpulpiten|akterpulpeten|"
        "akterpulpit|pushpit|pulpit|akterpulpiten|akterräcke|räcke|räcket|akterstolpar|sargräcke|aktersarg",
        "O_STAY": "akterstag|akterstaget|akterstagen|dubbla akterstag|delat akterstag|häckstag|akterstagets|backstag",
        "O_BOOM": "mesanbom|bom|mesanbommen|storbom|bomnock|bommen|storbommen",
        "O_ARCH": "targabåge|akterbåge|targabågen|targa|båge|bågen|akterportal|portal|radarbåge",
        "O_PANELS": "solpaneler|solpanel|solceller|solcellspanel|solcellspaneler|solcell*|solpanelerna",
        "O_MAST": "radarmast|vindgenerator|vindkraftverk|vindsnurra|radarstolpe|antennmast|radarmasten",
        "O_STAFF": "flaggspel|flaggstång|flaggspelet|flaggstången",
        "O_PASSERELLE": "landgång|landgången|gångway|passerelle",
        "FOLD": "att fälla upp|att fälla|fälls undan|bortfällbar|"
        "fällbar|fällbart|uppfällbar|vikbar|fällbara|uppfällbart|nedfällbar|nerfällbar|hopfällbar|går att fälla|"
        "fälls upp|kan fällas|vikbart|vikbara|uppvikbar|fäller upp|ihopfällbar|fälls|kan fällas upp|"
        "som fälls upp|nedfällbart",
        "FIXED": "fast|fast monterad|svetsad|fasta|fastmonterad|fastskruvad|bultad|svetsat|stel|fastsvetsad|fastbultad|"
        "ej fällbar|skruvad",
        "REMOVE": "kan vara utan|klara oss utan|klarar oss utan|"
        "kan flyttas undan|går att flytta|"
        "monteras bort|tas bort vid behov|"
        "demonterbar|kan tas bort|löstagbar|tas bort|får tas bort|gärna tas bort|kan plockas bort|"
        "kan monteras bort|kan avlägsnas|avtagbar|demonterbart|demonteras|går att ta bort|kan demonteras|"
        "borttagbar|kan flyttas|kan tas av|ta bort|monteras av|går att demontera|löstagbart|kan lossas|"
        "får gärna tas bort",
        "KEEP": "sitter kvar|"
        "fortsätta använda|kunna använda|"
        "vill vi inte ta bort|vill jag inte ta bort|"
        "måste vara kvar|ska vara kvar|behålla|måste sitta kvar|ska sitta kvar|vill behålla|vill vi behålla|"
        "vill ha kvar|måste finnas kvar|vara kvar|sitta kvar|bli kvar|den ska vara kvar|måste behållas|"
        "får inte tas bort|kan inte tas bort|skall vara kvar|ha kvar|skall behållas|går inte att ta bort|"
        "vill jag behålla|ska behållas",
        "YES": "ja",
        "NOT": "ingen|inga|inte|utan|inget|nej|finns inte|saknas|aldrig|varken|icke|inga alls|finns ej|ej",
        "PORT": "babord|babords|babords sida|babordssidan|bb|om babord|på babord|vänster|babordssida|vänster sida",
        "STARBOARD": "styrbord|styrbords|styrbords sida|styrbordssidan|sb|om styrbord|på styrbord|höger|styrbordssida|"
        "höger sida",
        "CENTRE": "centrum|mitten|mittlinjen|från centrum|midskepps|mitt på|mitt|från mitten|centrumlinjen|i mitten|"
        "centralt|mittlinje|från mittlinjen|mitten av|midskeppslinjen",
        "EACH_SIDE": "på varje sida|på båda sidor|på vardera sidan|ett på varje sida|båda sidorna|på bägge sidor",
        "PREFER": "om möjligt|om det går|"
        "helst|föredrar|vill helst|skulle helst|föredra|gärna på|önskar|önskemål|hellre|vi vill ha|föredras|"
        "helst på",
        "OTHER_BOAT": "hans är|hennes är|hans båt|hennes båt|"
        "grann*|"
        "granne|grannen|grannens|vän|förra båt|grannens båt|grannbåt|en vän|kompis|kompisens|vännens|förra båten|"
        "bryggranne|bryggrannen|bekant|kollega|annan båt|tidigare båt|bror|svåger|min bror|en bekant|gamla båt*",
        "BELOW": "under vattnet|under vattenlinjen|under vattenytan|under vl|nedsänkt|under vattenlinje|i vattnet|"
        "under ytan|därunder",
        "OURS": "bror och jag|vän och jag|kompis och jag|"
        "vår|vi har|vårt|min|våran|hos oss|min båt|vår båt|vi har en|på vår|på min|jag har en",
        "YEAR": "från|byggd|årsmodell|byggår|byggt|byggd år|tillverkad|sjösatt|sjösattes|från år|tillverkningsår|"
        "modellår|årgång|av år",
        "HULL_NUMBER": "skrovnummer|byggnummer|skrov nr|båtnummer|skrovnr|bygg nr|tillverkningsnummer|båt nr",
        "BUILDER": "varv|tillverkare|varvet|båtbyggare|byggare|byggd av|båtvarv",
        "MODEL": "modell|båt|typ|båttyp|båtmodell|båtmärke|märke och modell|modellen",
        "ASK": "funderar på att köpa|vilket fäste|behövs|pris|offert|passar|vilken|intresserad|undrar|vad rekommenderar|"
        "rekommenderar|rekommendera|vad kostar|kostar|kostnad|söker|letar|passa|kan ni|fråga|frågor|hur mycket|"
        "priset|vill ha|vill veta|önskar offert|lämpligt|lämplig|behöver|prisuppgift|förslag|vilket|tacksam|"
        "intresserade|fungerar|offertförfrågan",
        "GEAR": "vindroder|vindrodret|självstyrning|vindrodren|vindflöjel|vindflöjeln|självstyrningen|vindstyrning|"
        "vindstyre|vindstyrt|vindpilot|hjälproder|vindrorder|vindsjälvstyrning",
        "ORDER": "reservdel|reservdelar|beställa|beställning|serienummer|reservdelar till|bussningar|bussning|"
        "ny vindflöjel|nytt blad|serienr|trasig|trasigt|utslitna|frakt|slitna|nytt roderblad|knäckt",
        "THANKS": "tack så mycket|tusen tack|stort tack|tackar|nöjda|nöjd|kommit fram|framkommit",
        "SIGN_OFF": "vänliga hälsningar|hälsningar|med vänlig hälsning|mvh|hälsning|tack på förhand|vänligen|"
        "hjärtliga hälsningar|bästa hälsningar|med vänliga hälsningar|m v h|hälsar|soliga hälsningar|"
        "tacksam för svar|många hälsningar|allt gott|hälsn|med seglarhälsning|seglarhälsningar|vänlig hälsning|"
        "tack",
        "CUSTOMER": "kund|kunden|en kund|kunder|till en kund|ägare|ägaren|för en kunds|vår kund",
        "COMPANY": "marin|båtvarv|ab|båtservice|segelmakeri|marinservice|båttillbehör|yachts|rigg|riggverkstad|sjösport|"
        "båtaffär|marinteknik|båtmäklare",
        "PHONE": "tel|mobil|telefon|mob|tfn|telnr|mobilnr|mobiltelefon|t",
        "FAX": "fax|org",
        "M_PHONE": "mobilens vattenpass|mobilen|telefonen|vattenpass i mobilen|mobilapp|app",
        "M_INCL": "vinkelmätare|lutningsmätare|inklinometer|gradskiva|vattenpass|digitalt vattenpass",
        "M_LASER": "laser|lasermätare|avståndsmätare",
        "M_DRAWING": "ritning|ritningen|ritningar|ritningarna|linjeritning|från ritningen",
        "M_BROCHURE": "broschyr|broschyren|datablad|enligt varvet|enligt tillverkaren|katalog|specifikation|mätbrev|manualen",
        "M_GUESS": "på ögonmått|ögonmått|uppskattat|uppskattad|uppskattning|uppskattningsvis|gissar|gissning|höftat|"
        "på en höft|gissningsvis",
        "M_PHOTO": "foto|fotot|bild|bilden|från foto",
        "GIVE_TAKE": "plus minus|plus eller minus|på ett ungefär",
        "WITHIN": "noggrannhet",
        "BOOTSTRIPE": "vattenlinjerand|vattenpassränder|boot top|vattenlinjeranden|bottenfärgskant|vattengången",
        "COCKPIT": "sittbrunnsdurken|sittbrunn|sittbrunnen|sittbrunnsgolvet|durken|sittbrunnsdurk",
        "DEPTH": "djupt|djupa",
        "LENGTH": "lång",
        "O_BOOMKIN": "driverbom|akterspröt",
        "O_LOCKER": "gasolbox|livflotte|akterbox|stuvfack akter",
        "SLIDE": "teleskop|utdragbar|utdragbart|teleskopisk|skjutbar",
        "SWING": "svängbar|vridbar",
        "AVOID": "undvika|absolut inte|helst inte|undviker|inte gärna|slippa",
        "WITHDRAW": "glöm|bortse från|felaktig|gäller inte|stämmer inte|var fel|fel",
        "MEANT": "menade|jag menade|ska vara|skall vara|rättelse|i stället för|istället för|korrigering|rätt är|"
        "egentligen|skrivfel|rätt värde|korrekt är|det ska stå",
        "JUST_TOUCH": "jäms med|tangerar|i höjd med|når precis",
        "OWNED": "vårt vindroder|mitt vindroder|köpt av er|köpte|köptes|sedan vi köpte|levererat",
        "SELL": "nyhetsbrev|avregistrera|rabatt|mässa|utställare|klicka|erbjudande|sökmotor|kampanj|tävling|rea",
        "INSTEAD": "i stället för|istället för",
        "PLUMB_LINE": "lod|lodlina|lodlinan|lodsnöre|med lod",
        "MEASURED": "mätt|mått|måtten|uppmätt|mätning|mätte|mätningar",
        "AT_WATER": "precis i vattenlinjen|i vattenlinjen|vid vattenlinjen|nuddar vattnet|precis vid vattenytan|i vattenytan|"
        "på vattenlinjen",
        "OOPS": "nej|fel av mig|förlåt|jag menar|ursäkta|fel|rättelse|eller snarare|snarare|sorry|vänta",
        "GONE": "såld|har vi sålt|har jag sålt|sålde|"
        "är redan borta|är bortmonterad|bortmonterad|"
        "i stickbacken|i en stickback|i stuvfacket|stuvad|stuvas|förvaras|ligger i en|ligger hemma|"
        "står hemma|"
        "är borttagen|är borta|togs bort|har vi tagit bort|har jag tagit bort|tog vi bort|tog jag bort|"
        "är demonterad|finns inte kvar",
        "ENDS": "slutar|upphör",
        "BESIDE": "bredvid|intill|nära|vid sidan av|invid",
        "BEGIN": "börjar|med början",
        "EXCEPT": "utom|förutom|bortsett från|bara|endast",
    },
)
