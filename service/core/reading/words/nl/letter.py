"""Dutch: whose boat, what is put right, what is asked, and leave taken."""

WORDS = {
    "YES": "ja",
    "NOT": "geen|niet|zonder|nee|niets|noch|nergens|geen enkele|ontbreekt|niet aanwezig|nvt|n v t",
    "OTHER_BOAT": (
        "hiervoor hadden we|daarvoor hadden we|vroeger hadden we|eerder hadden we|hiervoor had ik|"
        "hiervoor hadden wij|daarvoor hadden wij|ligplaats is|box is|"
        "de zijne|het zijne|die van hem|zijn boot|buurman*|buurman|vriend|vorige boot|buren|buurmans|vriend van|"
        "een vriend|kennis|vorig schip|oude boot|collega|steigerbuurman|andere boot|broer|zwager|"
        "ligplaatsbuurman|zusje|maat van|vrienden|buurboot|boot ernaast|schip ernaast|de boot naast ons|oom|"
        "schoonvader|clubgenoot|clublid|havenbuurman|havengenoot|steigergenoot|zusterschip|zusterschepen|"
        "onze vorige|mijn vorige|ons vorige|onze oude boot|mijn oude boot|vroegere boot|eerdere boot|"
        "vorige jacht|de andere boot|een kennis|zeilvriend|een maat|mijn maat|vriendin|bij de buurman|buurvrouw|"
        "van een vriend|bij een vriend|een ander schip|collega zeiler|zijn schip|mijn vriend|die van de buurman|"
        "die van mijn|"
        "niet de onze|niet die van ons|niet van ons|niet de mijne"
    ),
    "WITHDRAW": (
        "niet meenemen|laat weg|laat maar zitten|houd geen rekening met|vergeet|negeer|klopt niet|was fout|"
        "was verkeerd|niet juist|fout"
    ),
    "MEANT": (
        "cijfers omgedraaid|cijfers verwisseld|bedoelde|ik bedoel|bedoeld|in plaats van|moet zijn|moet het zijn|"
        "correctie|rectificatie|juiste|vergissing|typefout|eigenlijk"
    ),
    "OURS": (
        "broer en ik|vriend en ik|zwager en ik|onze|wij hebben|mijn|bij ons|mijn boot|onze boot|de mijne|"
        "wij hebben een|de onze"
    ),
    "ASK": (
        "offerteaanvraag|voorstel|offerte|prijs|graag|welke|nodig|passen|past|levertijd|zoeken|zoek|kost|kosten|"
        "vraag|vragen|raden|adviseren|advies|aanraden|weten|geschikt|informatie|kunnen jullie|kunt u|"
        "heb ik nodig|hebben we nodig|interesse|willen graag|wat is er nodig|mogelijk|passende|prijsopgave|"
        "prijzen"
    ),
    "GEAR": (
        "windvaan|windvaanstuurinrichting|windstuurinrichting|zelfstuurinrichting|windvanen|windvaanbesturing|"
        "stuurautomaat op wind|windbesturing|windstuurautomaat|hulproer|zelfbesturing|windvaan stuurinrichting|"
        "windvaanstuur|stuurvaan"
    ),
    "ORDER": (
        "onderdeel|onderdelen|bestelling|bestellen|serienummer|reserveonderdelen|reserveonderdeel|lagers|bussen|"
        "nieuw blad|nieuwe vaan|nabestellen|serie nummer|vervangen|versleten|kapot|gebroken|verzendkosten"
    ),
    "OWNED": "mijn windvaan|onze windvaan|bij jullie gekocht|gekocht in|geleverd in",
    "THANKS": (
        "bedanken|bedank|dankbaar|goed aangekomen|veilig aangekomen|heel blij|erg blij|"
        "hartelijk dank|bedankt|heel erg bedankt|veel dank|hartelijk bedankt|tevreden|aangekomen|dank"
    ),
    "SIGN_OFF": (
        "met vriendelijke groet|met vriendelijke groeten|groet|groeten|mvg|vriendelijke groet|alvast bedankt|"
        "groetjes|hartelijke groet|hartelijke groeten|vriendelijke groeten|met groet|m vr gr|vr gr|"
        "bij voorbaat dank|dank alvast|groeten uit|met hartelijke groet|hoogachtend|gr|met zeilersgroet|"
        "behouden vaart|vr groet|met zonnige groet|groetjes uit|met zeegroet|hartelijks|groeten van|tot ziens|"
        "tot horens|goede vaart|lieve groet|vaargroet|beste groet|warme groet|duizendmaal dank|heel veel dank|"
        "bedankt alvast|met dank|dank jullie wel|dank u wel"
    ),
    "CUSTOMER": "klant|voor een klant|klanten|eigenaar|opdrachtgever|een klant|namens",
    "COMPANY": (
        "scheepsuitrusting|nautiek|techniek|watersport|jachtservice|b v|bv|jachtwerf|scheepswerf|"
        "watersportbedrijf|zeilmakerij|scheepsbouw|jachtbouw|jachthaven|tuigerij|nautisch|scheepstechniek|"
        "jachtmakelaar|watersportwinkel|marine|scheepsuitrusters|vof|zeilen"
    ),
    "PHONE": "tel|telefoon|mobiel|mob|mobiele nummer|gsm|t|m|telefoonnummer",
    "FAX": "fax|kvk|btw",
    "SELL": (
        "nieuwsbrief|afmelden|uitschrijven|korting|beurs|exposanten|klik hier|aanbieding|vindbaarheid|actieprijs|"
        "winactie"
    ),
    "INSTEAD": "in plaats van",
    "OOPS": "nee|of nee|sorry|pardon|fout|ik bedoel|excuus|beter gezegd|correctie|wacht|herstel|nee wacht",
}
