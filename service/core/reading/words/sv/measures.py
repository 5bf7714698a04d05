"""Swedish: what is measured, from where, which way and by what."""

WORDS = {
    "LENGTH": "lång",
    "HEIGHT": "höjd|höjden|hög|höjd över|fribord|högt|höjder|höga|höjdmått|på höjden|höjd ovan|i höjd|högre",
    "WIDTH": (
        "bredd|bredden|bred|brett|breda|på bredden|bredd upptill|spegelbredd|spegelns bredd|bredder|"
        "bredden upptill|från sida till sida|tvärskepps|i bredd|tvärs|på tvären|spegelbredden|akterspegelbredd|"
        "breddmått"
    ),
    "THICK": (
        "tjocklek|tjock|tjockleken|tjockt|tjocka|godstjocklek|skrovtjocklek|laminattjocklek|plåttjocklek|"
        "tjocklekar|godstjockleken|väggtjocklek|spegeltjocklek|plåttjockleken|materialtjocklek|total tjocklek|"
        "i tjocklek|laminattjockleken|skrovtjockleken|tjockare|godset"
    ),
    "DEPTH": "i längsled|långskepps|från för till akter|framifrån och bakåt|i långskeppsled|djupt|djupa|djup",
    "LOA": (
        "längd|längden|längd över allt|löa|båtens längd|l ö a|total längd|skrovlängd|längd ö a|längd överallt|"
        "l.ö.a|total längden|skrovlängden|båtlängd|båtlängden|längd totalt|loa|överallt|hela längden|"
        "längd på båten"
    ),
    "LWL": "lvl|vattenlinjelängd|längd i vattenlinjen|längd vl|lwl",
    "BEAM": (
        "största bredd|båtens bredd|bredd max|max bredd|maxbredd|största bredden|bredd över allt|total bredd|"
        "b max|båtbredd|båtbredden|bredd överallt|skrovbredd|bmax|bredaste stället|största bredd på"
    ),
    "DRAFT": (
        "djupgående|djup|djupgåendet|sticker djupt|går djupt|djupgång|djupgående på|djupgåendet är|stick djup|sticker"
    ),
    "DISPLACEMENT": (
        "deplacement|vikt|väger|deplacementet|vikten|deplacerar|vägs|väga|tung|total vikt|båtvikt|båtens vikt|"
        "kranen|vägdes|lastad vikt|deplacementet är|vägde|vikt på|egenvikt|torrvikt|båten väger|lastvikt|tomvikt|"
        "kranvåg|kranvågen|seglingsvikt|deplacement på|tonnage|segelklar|segelfärdig|på vågen"
    ),
    "BALLAST": "ballast|köl|motor|jolle|kölen|kölvikt|motorn|jollen|ankare|besättning",
    "RAKE": (
        "lutning|vinkel|lutningen|lutningsvinkel|vinkeln|spegelns lutning|gradtal|lutningen på spegeln|"
        "spegellutning|från lodlinjen|från lodrätt|mot lodlinjen|ur lod|från vertikalen|mot vertikalen|"
        "akterspegelns lutning|spegelvinkel|lutningsvinkeln|snedhet|lutning på|akterspegellutning|ur lodrät"
    ),
    "LEAN": (
        "lutar|lutande|lutat|luta|faller|sluttar|snedställd|lutad|snedställt|vinklad|lutade|lutar ut|lutar in|"
        "sned|snett|snedställda|lutningen är|vinklat|faller ut|sluttande"
    ),
    "TURN": (
        "åt varje håll|åt vardera hållet|roderutslag|åt vardera sidan|till varje sida|åt båda håll|per sida|"
        "max utslag|utslag|till vardera sidan|vardera håll|max roderutslag|rodervinkel|maximalt roderutslag|"
        "maximalt utslag|utslaget|åt båda sidor|fullt utslag|rodret vrids|vrids|åt vardera|max rodervinkel|"
        "utslag på|roderutslaget|utslag åt|på vardera sidan|åt varje sida"
    ),
    "FORWARD": (
        "för om|förut|förom|framåt|föröver|längst förut|framför|längre fram|längre förut|förligare|mot fören|"
        "längre föröver|framom|framför akterspegeln|för spegeln|inåt|mot stäven|fram om|för om spegeln|"
        "in mot sittbrunnen|förligare än|framåtlutande|längre fram än|närmare fören|innanför|framåt fören|"
        "föröverlutande|för akterspegeln|för överkanten|för akterstäven|för om akterspegeln"
    ),
    "AFT": (
        "akterut|akteröver|längst akterut|bakåt|akter om|bakom|längre bak|längre akterut|akterligare|mot aktern|"
        "akterom|akterut från|längre akteröver|utanför spegeln|akter därom|akterifrån|bakom spegeln|utåt|bak|"
        "akterligare än|akter om spegeln|bakom akterspegeln|akterlutande|längre bak än|närmare aktern|"
        "utanför akterspegeln|baköver|akter|ut bakom|akteröverlutande|bakom överkanten|akter om akterspegeln"
    ),
    "TOP": (
        "rodrets topp|roderhuvud|roderhuvudet|rodertopp|rodertoppen|toppen av rodret|rodrets överkant|"
        "stävens topp|stävtoppen|akterstävens topp|kanten på spegeln|spegelkanten|akterspegelns kant|till däck|"
        "upp till däck|går upp till|når upp till|överkant|överkanten|ovankant|överkanten av|överdel|övre kant|"
        "övre kanten|överkantens|upptill|ovansida|toppen|däckskanten|uppe|högst upp|spegelns överkant|"
        "akterspegelns överkant|överkantens läge|topp|toppen av stäven|toppen av akterstäven|bredd upptill|"
        "högsta punkt|högsta punkten|överst|översta|översta kanten|övre|överdelen|ovansidan|krönet|ovanände|"
        "toppkanten|upptill på|högsta delen|övre änden|spegelöverkant|akterspegelöverkant|däckskant|"
        "däckskanten akter|övre del|över kanten|toppens|krön|däckshöjd|akterspegelkanten|från däck|däcket|"
        "från däcket"
    ),
    "BOTTOM": (
        "rodrets underkant|roderunderkant|rodrets nederkant|går ner till|går ned till|underkant|underkanten|"
        "nederkant|nederkanten|nedre kant|nedre kanten|nedtill|underdel|botten av spegeln|undersida|längst ner|"
        "längst ned|nederst|akterspegelns underkant|spegelns underkant|nertill|lägsta punkt|lägsta punkten|"
        "understa|understa kanten|undre|undre kant|undre kanten|nedre|nedersta|nedersta kanten|nederdel|"
        "underände|fot|foten|akterspegelunderkant|undersidan|lägsta delen|nedtill på|spegelns fot"
    ),
    "WATER": (
        "vattenlinjen|vattenlinje|vattnet|vatten|vattenytan|vattenyta|vattennivån|vl|kvl|vattenlinjens|ytan|"
        "konstruktionsvattenlinjen|fribord|under vattnet|under vattenlinjen|under vattenytan|under vl|"
        "under vattenlinje|i vattnet|under ytan|precis i vattenlinjen|i vattenlinjen|vid vattenlinjen|"
        "nuddar vattnet|precis vid vattenytan|i vattenytan|på vattenlinjen|vattenytans|vattenplanet|havsytan|"
        "vattennivå|sjön|dvl|konstruktionsvattenlinje|fribordet|vattenbrynet|vattenståndet|flytlinje|flytlinjen|"
        "ytvattnet|vattenspegeln|vattnets yta|vattenlinjens nivå|vattenlinjerna|under vattenspegeln|nedsänkt|"
        "nedsänkta|ligger under ytan"
    ),
    "AT_WATER": (
        "precis i vattenlinjen|i vattenlinjen|vid vattenlinjen|nuddar vattnet|precis vid vattenytan|i vattenytan|"
        "på vattenlinjen"
    ),
    "JUST_TOUCH": "jäms med|tangerar|i höjd med|når precis",
    "BELOW": (
        "under vattnet|under vattenlinjen|under vattenytan|under vl|nedsänkt|under vattenlinje|i vattnet|"
        "under ytan|därunder|under vattenspegeln|nedsänkta|doppar|går under|ligger under ytan"
    ),
    "BOOTSTRIPE": "vattenlinjerand|vattenpassränder|boot top|vattenlinjeranden|bottenfärgskant|vattengången",
    "TOERAIL": (
        "fotlist|fotlisten|relingslist|relingslisten|brädgång|skarndäck|avbärarlist|tålist|teaklist|fotreling|"
        "skarndäcket|relingslister|fotlister|tålisten|sarglist|fotrelingen"
    ),
    "COCKPIT": "sittbrunnsdurken|sittbrunn|sittbrunnen|sittbrunnsgolvet|durken|sittbrunnsdurk|durk|sittbrunnens durk",
    "STEP": (
        "badsteg|trappsteg|badsteget|trappsteget|ingjutet steg|badtrappa|steg|ingjuten badplattform|"
        "integrerad badplattform|inbyggd badplattform|ingjuten plattform|steget|steget ligger|inbyggt badsteg|"
        "ingjutet badsteg"
    ),
    "ENDS": "slutar|upphör|slutande|tar slut|ändar|upphörande|slutade",
    "STICK_OUT": (
        "sticker ut|sticker|skjuter ut|sticker bakåt|utstick|går ut|sticker akterut|skjuter bakåt|når ut|"
        "hänger ut|utskjutande|sträcker sig|skjuter akterut|sticker bakom|skjuter|går akterut|utsprång|utskjut|"
        "sticker utanför|går som längst|går bakåt|når bakom|går längst"
    ),
    "M_TAPE": (
        "måttband|måttbandet|tumstock|tumstocken|meterband|rullmått|mätt med måttband|måttstock|meterstock|"
        "med tumstock|med måttband|skjutmått|stålmåttband|måttbands|med en tumstock|snickarmått|tumstockens|"
        "mätband"
    ),
    "M_PHONE": (
        "mobilens vattenpass|mobilen|telefonen|vattenpass i mobilen|mobilapp|app|iphone|vattenpass app|"
        "vattenpassapp|telefonens vattenpass|mobilens lutningsmätare|mobiltelefonen|med mobilen|med telefonen|"
        "app i mobilen|mobilappen|telefonapp|vattenpassappen|lutningsapp"
    ),
    "M_INCL": "vinkelmätare|lutningsmätare|inklinometer|gradskiva|vattenpass|digitalt vattenpass",
    "M_LASER": "laser|lasermätare|avståndsmätare",
    "M_DRAWING": (
        "ritning|ritningen|ritningar|ritningarna|linjeritning|från ritningen|spantruta|konstruktionsritning|"
        "konstruktionsritningar|segelplan|byggritning|byggritningar|varvets ritning|varvets ritningar|"
        "på ritningen|ur ritningen|enligt ritning|enligt ritningen|ritningsmått|från ritning|varvsritning|"
        "varvsritningen|profilritning|generalritning|av ritningen"
    ),
    "M_BROCHURE": (
        "broschyr|broschyren|datablad|enligt varvet|enligt tillverkaren|katalog|specifikation|mätbrev|manualen|"
        "enligt broschyren|enligt broschyr|enligt manualen|enligt databladet|enligt handboken|handbok|handboken|"
        "ägarmanual|enligt specifikationen|specifikationer|enligt papperen|båtpapper|varvets uppgift|"
        "varvets uppgifter|tillverkarens uppgift|prospekt|prospektet|enligt mätbrevet|mätbrevet|katalogen|"
        "enligt katalogen|i broschyren|enligt pappren|enligt sailguide|båttest"
    ),
    "M_GUESS": (
        "på ögonmått|ögonmått|uppskattat|uppskattad|uppskattning|uppskattningsvis|gissar|gissning|höftat|"
        "på en höft|gissningsvis|på känn|ur minnet|skattat|skattad|grovt räknat|höftar|uppskattar|med ögat|"
        "med ögonmått|grov gissning|gissat|gissad|skulle gissa|uppskattad till|gissningen|på höften|okulärt|"
        "okulär|efter ögonmått|skulle tippa|tippar|en uppskattning|uppskattade"
    ),
    "M_PHOTO": "foto|fotot|bild|bilden|från foto",
    "MEASURED": "mätt|mått|måtten|uppmätt|mätning|mätte|mätningar",
    "PLUMB_LINE": "lod|lodlina|lodlinan|lodsnöre|med lod|sänklod|ett lod|snöre|tyngd i ett snöre",
    "GIVE_TAKE": (
        "plus minus|plus eller minus|på ett ungefär|med en felmarginal på|felmarginal på|felmarginal|tolerans på|"
        "noggrannhet på|med en noggrannhet på|osäkerhet på|plusminus|med en osäkerhet på|marginal på"
    ),
    "WITHIN": "noggrannhet",
}
