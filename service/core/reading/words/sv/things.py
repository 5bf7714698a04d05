"""Swedish: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": (
        "badstege|badstegen|stege|stegen|stegar|badstegar|badsteg|akterstege|teleskopstege|teleskopstegen|"
        "badstegarna|akterstegen|räddningsstege|nödstege|repstege|badlejdare|lejdare|fallrep|stegens|badstegens|"
        "rostfri stege|peke stege"
    ),
    "O_PLATFORM": (
        "badplattform|plattform|badbrygga|badplattformen|plattformen|badbryggan|akterplattform|badplattformar|"
        "badbryggor|simplattform|badflak|akterbrygga|aktertrall|badtrall|dykplattform|teaktrall|påhängd brygga|"
        "plattformar|badbräda"
    ),
    "O_DAVITS": (
        "dävertar|dävert|dävertarna|dävertar för jolle|dävert*|jolledävertar|dävertarmar|jollekran|jolledävert|"
        "däverterna|aktra dävertar|akterdävertar|jollelift|david|davitar"
    ),
    "O_OUTBOARD": (
        "utombordare|utombordsmotor|utombordsfäste|utombordaren|utombordarfäste|utombordsmotorn|aktersnurra|"
        "snurra|aktersnurran|motorfäste|utombordsfästet|hjälpmotorfäste|utombordarhylla|motorhylla|elutombordare|"
        "utombordarens fäste|motorbrygga|snurrfäste|utombordarna|utbordare|motorfästet|akterfäste för motor"
    ),
    "O_EXHAUST": (
        "avgasrör|avgasutlopp|avgasröret|avgas|avgasutsläpp|avgasgenomföring|avgasrörets|avgasledning|avgasuttag|"
        "avgashål|avgasen|avgasrören|avgasslang|våtavgas|avgasutloppet|avgasutblås|avgasgenomföringen"
    ),
    "O_RAIL": (
        "akterstol|häckpulpit|häckpulpiten|akterpulpeten|akterpulpit|pushpit|pulpit|akterpulpiten|akterräcke|"
        "räcke|räcket|akterstolpar|sargräcke|aktersarg|akterpulpeter|akterpulpitens|delad akterpulpit|"
        "akterräcket|häckräcke|relingen akter|reling|akterreling|aktergrind|akterstolen|akterstolar|pulpiten|"
        "delade akterpulpeter|aktersargen"
    ),
    "O_STAY": (
        "akterstag|akterstaget|akterstagen|dubbla akterstag|delat akterstag|häckstag|akterstagets|backstag|"
        "akterstagens|häckstaget|häckstagen|dubbla häckstag|delade akterstag|akterstagsröst|akterstagsfäste|"
        "akterstagsspännare|häckstagssträckare|akterstagssträckare|akterstag med gaffel|bardun|barduner|bakstag"
    ),
    "O_BOOM": (
        "mesanbom|bom|mesanbommen|storbom|bomnock|bommen|storbommen|bommens|bomände|bomänden|storsegelbom|"
        "bomnocken|mesanbommens"
    ),
    "O_ARCH": (
        "targabåge|akterbåge|targabågen|targa|båge|bågen|akterportal|portal|radarbåge|targabågar|targabågens|"
        "rostfri båge|solcellsbåge|akterbågen|akterportalen|radarbågen|targa båge|targan|bågar|galge|"
        "rostfri portal|portalen|solpanelbåge|antennbåge|aktergalge"
    ),
    "O_PANELS": (
        "solpaneler|solpanel|solceller|solcellspanel|solcellspaneler|solcell*|solpanelerna|solpanelen|"
        "solcellspanelerna|solcellerna|solcellsmoduler|paneler|panelerna|solceller akter"
    ),
    "O_MAST": (
        "radarmast|vindgenerator|vindkraftverk|vindsnurra|radarstolpe|antennmast|radarmasten|vindgeneratorn|"
        "vindgeneratorns|vindgeneratormast|radarmastens|radarstolpen|antennmasten|radarstång|vindsnurran|"
        "vindkraft|vindmölla|radarpåle|radarpinne|mast för radar|gps antenn|antennstång|antennrör|vhf antenn|"
        "ais antenn|gps svamp|antennfäste"
    ),
    "O_STAFF": (
        "flaggspel|flaggstång|flaggspelet|flaggstången|flaggstångshållare|flaggspelsfäste|flaggstänger|"
        "flaggstångsfäste|flaggspels|akterflagga|flaggkäpp"
    ),
    "O_PASSERELLE": (
        "landgång|landgången|gångway|passerelle|landgångar|landgångsplanka|ombordstigningsplanka|gångbräda|"
        "landgångens|passarella|ombordstigningsbrygga|gangway"
    ),
    "O_BOOMKIN": "driverbom|akterspröt|akterbogspröt|drivarbom|mesanspröt|akterpeke|akterpeket",
    "O_OTHER": "grill|grillen|gasolgrill|spöhållare|akterankare|akterankaret|ankarrulle akter",
    "O_LOCKER": (
        "gasolkista|gasolkistan|"
        "gasolbox|livflotte|akterbox|stuvfack akter|livflotten|livflottehållare|livboj|gasollåda|gasolkoffert|"
        "räddningsflotte|livflottar|gasollådan"
    ),
    "EMPTY": "tom båt|tom|olastad|utan last|tomt|tomma båten",
    "LADEN": (
        "lastad|fullastad|med last|lastad för långsegling|djupare än ritningen|under sin ritade vattenlinje|"
        "djupare än på ritningen"
    ),
    "SINKS": (
        "djupare|sjunker|lägre|längre ner i vattnet|djupare än ritningen|under sin ritade vattenlinje|"
        "djupare än på ritningen"
    ),
    "CAMBER": "välvning|pilhöjd|bukt|välvd|buktning|krökning",
    "DROP": (
        "höjdskillnad|höjdskillnaden|höjd mellan|höjden mellan|vertikalt avstånd|lodrätt mätt|mätt lodrätt|"
        "mätt vertikalt|vertikalt mätt|lodrät höjd|från kant till kant|rakt ner|rakt ned|"
        "från över till underkant|mellan över och underkant|från överkant till underkant|"
        "mellan överkant och underkant"
    ),
    "AXIS": "axel|axeln|axelns|stock|stocken|axeltapp",
    "FOLD": (
        "att fälla upp|att fälla|fälls undan|bortfällbar|fällbar|fällbart|uppfällbar|vikbar|fällbara|uppfällbart|"
        "nedfällbar|nerfällbar|hopfällbar|går att fälla|fälls upp|kan fällas|vikbart|vikbara|uppvikbar|"
        "fäller upp|ihopfällbar|fälls|kan fällas upp|som fälls upp|nedfällbart|fällas upp|fällas ned|fällas ner|"
        "fällas in|fällas undan|fäller ner|fällas|fälls in|fälls ihop|fälls ned|fälls ner|viks upp|viks in|"
        "viks ihop|viks|vikas|kan vikas|kan fällas undan|kan fällas in|kan fällas ner|går att fälla upp|"
        "går att vika|på gångjärn|hopvikbar|infällbar|infällbart|ihopvikbar|uppfällbara|nedfällbara|hopfällbart|"
        "uppfälld|uppfällt|nedfälld|svängs upp|tippbar|kan tippas|tippas upp|fälla upp|fälla ner|vika upp|"
        "uppsvängbar|uppvikbara|fällbar upp"
    ),
    "FIXED": (
        "fast|fast monterad|svetsad|fasta|fastmonterad|fastskruvad|bultad|svetsat|stel|fastsvetsad|fastbultad|"
        "ej fällbar|skruvad|fastmonterade|fastmonterat|fastsatt|fastsittande|fastskruvat|orörlig|ej fällbart|"
        "inte fällbar|inte fällbart|går inte att fälla|kan inte fällas|fälls inte|svetsade|fasta svetsade|"
        "genombultad|genombultade|styv|stela|bultat|påsvetsad|skruvat|fast infäst|inte vikbar|ihopsvetsad|"
        "fast montering"
    ),
    "REMOVE": (
        "kan vara utan|kan flyttas undan|går att flytta|tas bort vid behov|demonterbar|kan tas bort|löstagbar|"
        "får tas bort|gärna tas bort|kan plockas bort|kan monteras bort|kan avlägsnas|avtagbar|demonterbart|"
        "går att ta bort|kan demonteras|borttagbar|kan flyttas|kan tas av|går att demontera|löstagbart|"
        "kan lossas|får gärna tas bort|umbärlig|umbärligt|överflödig|överflödigt|behövs inte|behövs ej|"
        "behöver vi inte|behöver jag inte|till salu|kan ryka|får ryka|kan offras|kan undvaras|lös|löstagbara|"
        "avtagbart|avtagbara|demonterbara|borttagbart|flyttbar|flyttbart|skruvas bort|åker av|åker bort|ryker|"
        "kan försvinna|får försvinna|försvinner|ska bort|skall bort|kan åka bort|valfri|går att avvara|tas loss|"
        "kan lyftas av|hakas av|lyfts av|kan ligga i stickbacken|kan läggas i stickbacken|går att lyfta bort|"
        "går att dra ur|lyfts ur|kan stanna hemma|kan stanna iland|behöver inte längre|behövs inte längre|"
        "behöver vi inte längre"
    ),
    "KEEP": (
        "rädda om|rädd om|vill inte vara utan|vill vi inte vara utan|fästa vid|fäst vid|håller vi fast vid|"
        "vill inte bli av med|sitter kvar|fortsätta använda|kunna använda|vill vi inte ta bort|"
        "vill jag inte ta bort|måste vara kvar|ska vara kvar|behålla|måste sitta kvar|ska sitta kvar|"
        "vill behålla|vill vi behålla|vill ha kvar|måste finnas kvar|sitta kvar|bli kvar|den ska vara kvar|"
        "måste behållas|får inte tas bort|kan inte tas bort|skall vara kvar|ha kvar|skall behållas|"
        "går inte att ta bort|vill jag behålla|ska behållas|blir kvar|stannar|stannar kvar|stanna kvar|oumbärlig|"
        "oumbärligt|inte förhandlingsbar|helig|används dagligen|bevara|bevaras|bevarad|rör inte|röra den|"
        "låta sitta|låter sitta|lämna kvar|lämnas kvar|vill ogärna|ogärna bli av med|inte av med|får inte röras|"
        "inte diskutera|sitta där|sitter där den sitter|behåller|behålls|skall sitta kvar|måste stanna|"
        "ska stanna|vill ha den kvar|inte skiljas|skiljs vi inte|får sitta kvar|måste få sitta kvar|"
        "måste få vara kvar|får vara kvar|den behöver vi|dem behöver vi|den behöver jag|det behöver vi|"
        "den använder vi|behåller vi|behåller jag|den behåller"
    ),
    "PORT": (
        "babord|babords|babords sida|babordssidan|bb|om babord|på babord|vänster|babordssida|vänster sida|"
        "på babords sida|babordshalvan|babord akter|om bb|till babord|åt babord|på vänster sida|vänstra sidan|"
        "till vänster|på vänster|på babordssidan|babordslåring|låringen om babord|babordslåringen|på bb|"
        "vänster om"
    ),
    "STARBOARD": (
        "styrbord|styrbords|styrbords sida|styrbordssidan|sb|om styrbord|på styrbord|höger|styrbordssida|"
        "höger sida|på styrbords sida|styrbordshalvan|styrbord akter|till styrbord|åt styrbord|på höger sida|"
        "högra sidan|till höger|på höger|på styrbordssidan|styrbordslåring|låringen om styrbord|"
        "styrbordslåringen|på sb|höger om|om sb"
    ),
    "CENTRE": (
        "centrum|mitten|mittlinjen|från centrum|midskepps|mitt på|mitt|från mitten|centrumlinjen|i mitten|"
        "centralt|mittlinje|från mittlinjen|mitten av|midskeppslinjen|från centrumlinjen|från centerlinjen|"
        "centerlinjen|centerlinje|centrumlinje|från medellinjen|medellinjen|medellinje|ur mitten|"
        "vid sidan om mitten|exakt i mitten|mittskepps|midskeppslinje|från midskepps|mittplacerad|centrerad|"
        "centrerat|från båtens mitt|båtens mitt|spegelns mitt|i centrum|mittpå|mitt i|från mittlinje|från mitt|"
        "utanför mittlinjen|utanför centrum"
    ),
    "EACH_SIDE": (
        "på varje sida|på båda sidor|på vardera sidan|ett på varje sida|båda sidorna|på bägge sidor|"
        "på vardera sida|en på var sida|på var sida|en på varje sida|på bägge sidorna|babord och styrbord|"
        "styrbord och babord|om babord och styrbord|på varsin sida|varsin sida|på båda sidorna|på ömse sidor|"
        "bägge sidor|vardera sidan|åt var sida|åt vardera hållet|åt båda håll|på var sin sida"
    ),
    "PREFER": (
        "om möjligt|om det går|helst|föredrar|vill helst|skulle helst|föredra|gärna på|önskar|önskemål|hellre|"
        "vi vill ha|föredras|helst på|skulle föredra|föredrar att|vill gärna|ser helst|hellre ha|"
        "skulle helst vilja|gärna ha|vill ha den|gärna|helst om|gärna om|vi vill|jag vill|önskar oss|"
        "passar oss bäst|passar mig bäst|skulle passa bäst|skulle passa oss bäst|vore bäst|vill ha det|"
        "vill ha vindrodret|vill gärna ha det|vill gärna ha den|bättre för oss|bättre för mig|passar bäst|"
        "om det är möjligt|om vi får välja"
    ),
    "SLIDE": (
        "teleskop|utdragbar|utdragbart|teleskopisk|skjutbar|dras ut|kan dras ut|skjuts in|skjuts ut|utskjutbar|"
        "teleskopiskt|utdragbara|inskjutbar|teleskopstege|utdragsstege|skjuts under|kan skjutas in|som en låda|"
        "som en byrålåda|teleskopstegen"
    ),
    "SWING": (
        "svängbar|vridbar|svängbara|vridbara|svängs ut|kan svängas|svängbart|svänger ut|svängs in|svängs undan|"
        "kan vridas|vrids undan|sveper|svänger över|pendlar"
    ),
    "AVOID": "undvika|absolut inte|helst inte|undviker|inte gärna|slippa",
    "GONE": (
        "redan borta|redan borttagna|redan borttagen|redan sålda|redan såld|redan demonterade|redan demonterad|"
        "redan nedmonterade|finns inte längre|finns inte kvar|är borta|sitter inte kvar|inte längre kvar|"
        "har vi sålt|har jag sålt|är redan borta|är bortmonterad|i stickbacken|i en stickback|i stuvfacket|"
        "stuvad|stuvas|förvaras|ligger i en|ligger hemma|står hemma|är borttagen|togs bort|har vi tagit bort|"
        "har jag tagit bort|tog vi bort|tog jag bort|är demonterad|har vi inte längre|har jag inte längre|"
        "är sålda|är sålt|är såld|försvann|har försvunnit|hemma|i garaget|i förrådet|i land|under däck|"
        "i förpiken|i ruffen|i sittbrunnslådan|stuvad i|förvaras i|förvarar vi|ligger i|undanstuvad|"
        "ett minne blott|är ett minne|gick överbord|förra ägaren tog|har inte längre|inte längre|gått vidare|"
        "gavs bort|gett bort|getts bort|inte monterad än|beställd|på beställning|"
        "monterat ner|har jag monterat ner|monterat av|har jag monterat av|plockat bort|plockat av|tagit ner|"
        "har vi tagit ner"
    ),
    "BESIDE": "bredvid|intill|nära|vid sidan av|invid",
    "BEGIN": "börjar|med början|startar|börjar på",
    "EXCEPT": "utom|förutom|bortsett från|bara|endast",
    "OFF": (
        "demontera|demonterar|avlägsna|avlägsnar|avlägsnas|sälja|säljer|flytta|flyttar|flyttas|skruva loss|"
        "skruvas loss|lossa|avvara|undvara|undvaras|offra|borttages|plocka bort|plockas bort|säljas|"
        "klara oss utan|vara utan|avstå|säljs|demonteras|mista|förlora"
    ),
    "OFFED": (
        "demonterad|demonterat|demonterade|avlägsnad|avlägsnat|borttagen|borttaget|borttagna|bortmonterad|"
        "bortmonterat|såld|sålt|sålda|sålde|avmonterad|avmonterat|bortplockad|borttagits|monterats bort|"
        "bortplockade|avplockad|skänkt|skänkts|slängd|slängt|slängdes|kasserad|kasserat|skrotad|skrotat|"
        "bortskänkt|bortkapad|avkapad|avsågad|ruttnade|ruttnat|ruttnat bort|rostade sönder|lämnad i land|"
        "lämnade i land|bortslängd|avkapade|bortsågad|avlägsnades|såldes|ilandsatt|ilandlagd|utslängd"
    ),
    "V_TAKE": (
        "ta|tar|tas|tages|monterar|montera|monteras|plocka|plockar|plockas|skruva|skruvar|skruvas|lyfta|lyfts|"
        "lyfter|kapa|kapas"
    ),
    "V_TOOK": "tog|togs|tagit|tagits|tagen|monterade|monterat|plockade|plockat|skruvade|skruvat|lyft|kapade|kapat",
    "P_OFF": "bort|av|loss|undan|iland|i land",
    "MAY": (
        "kan|kunde|får|skall|ska|skulle|vill|måste|tänker|tänkt|planerar|kommer|lätt|enkelt|bli|blir|möjlig|"
        "möjligt|går|beredd|beredda|gärna|behöver|bör"
    ),
    "EASILY": (
        "utan problem|utan vidare|utan större besvär|inga problem|utan svårighet|inte svårt|utan verktyg|"
        "inget problem|utan bekymmer|utan besvär|inte i vägen"
    ),
    "SHIFTED": "flyttad|flyttat|flyttade",
    "STAY": "stanna|kvarstå|finnas kvar|finnas|vara kvar|sitta där|vara där",
    "DOWNWARD": (
        "nedåt|neråt|längre ner|längre ned|under överkanten|nedanför överkanten|om man går ner|ner från överkanten"
    ),
    "EVEN": (
        "rakt under|precis under|lodrätt under|i linje med|i liv med|jäms med|exakt under|i plan med|i lod med|"
        "direkt under|i samma plan"
    ),
    "TAKE_THIS": (
        "använd det|räkna med det|använd den|utgå från det|det är rätt|gå på det|lita på det|den gäller|räkna på det"
    ),
    "LOATH": "ogärna|motvilligt|tråkigt att|synd att|helst inte",
    "ZERO": "noll",
}
