"""What columns are called in nine languages (English, German, French, Spanish, Italian, Dutch, Swedish, Danish,
Norwegian), as data. What mails are read with says most of it: CONCEPTS names its concepts; PHRASES adds the words of
lists that no letter has. `VALUES` says what words in cells stand for.
"""  # noqa: D205 - the list of languages is longer than a line

from __future__ import annotations

CONCEPTS: dict[str, str] = {
    "boat.builder": "BUILDER",
    "boat.model": "MODEL",
    "boat.year": "YEAR",
    "boat.hull_number": "HULL_NUMBER",
    "boat.loa_mm": "LOA|BOAT LENGTH",
    "boat.lwl_mm": "LWL",
    "boat.beam_mm": "BEAM",
    "boat.draft_mm": "DRAFT",
    "boat.displacement_kg": "DISPLACEMENT",
    "transom.top_height_mm": "TRANSOM TOP HEIGHT|TRANSOM TOP|TRANSOM HEIGHT|TOP HEIGHT|TOP WATER",
    "transom.bottom_height_mm": "TRANSOM BOTTOM HEIGHT|TRANSOM BOTTOM|BOTTOM HEIGHT|BOTTOM WATER",
    "transom.rake_deg": "RAKE|TRANSOM RAKE",
    "transom.width_top_mm": "TRANSOM TOP WIDTH|TRANSOM WIDTH",
    "transom.width_waterline_mm": "WATER WIDTH|TRANSOM WATER WIDTH|TRANSOM BOTTOM WIDTH",
    "transom.thickness_mm": "THICK|TRANSOM THICK|HULL THICK",
    "transom.step_height_mm": "STEP HEIGHT",
    "transom.step_depth_mm": "STEP DEPTH",
    "transom.step_width_mm": "STEP WIDTH",
    "main_rudder.trailing_edge_aft_mm": "RUDDER TRAILING|TRAILING",
    "main_rudder.stock_aft_mm": "STOCK|RUDDER STOCK",
    "main_rudder.max_deflection_deg": "RUDDER TURN|TURN",
}
"""For each column the concepts that together mean it; the sets that do are divided by bars."""

PHRASES: dict[str, str] = {
    "record.reference": "reference|ref|job|job number|job no|order|order no|order number|installation|no|number|id|"
    "auftrag|auftragsnummer|auftrag nr|nummer|nr|lfd nr|vorgang|référence|numéro|commande|no commande|dossier|"
    "n dossier|no de dossier|n de dossier|n commande|"
    "referencia|número|pedido|nº|riferimento|numero|ordine|commessa|referentie|ordernummer|volgnummer|opdracht|"
    "referens|ordernr|löpnummer|reference nr|ordrenummer|ordre|løbenummer|referanse|løpenummer",
    "record.status": "status|state|stand|zustand|état|statut|estado|stato|toestand|läge|tilstand",
    "record.date": "date|installed|installed on|date installed|fitted|fitted on|date fitted|delivered|shipped|datum|"
    "einbaudatum|eingebaut am|lieferdatum|montiert am|date de pose|date de montage|posé le|livré le|fecha|"
    "fecha de montaje|instalado|data|data montaggio|montato il|montagedatum|geplaatst|inbouwdatum|monterad|"
    "monteringsdatum|dato|monteret|monteringsdato|montert|montert dato",
    "record.dealer": "dealer|agent|distributor|reseller|händler|vertretung|vertriebspartner|revendeur|"
    "concessionnaire|agente|distribuidor|rivenditore|concessionario|verkoper|handelaar|wederverkoper|"
    "återförsäljare|forhandler",
    "record.catalogue": "catalogue|catalog|catalogue version|katalog|katalogversion|catálogo|catalogo|catalogus",
    "record.hull": "hull model|hull id|hull model id|rumpfmodell",
    "configuration.gear": "gear|vane gear|windvane|wind vane|self steering|self steering gear|steering gear|model of gear|"
    "gear size|anlage|windsteuerung|windfahne|windfahnensteuerung|selbststeueranlage|größe anlage|régulateur|"
    "régulateur d'allure|timón de viento|timone a vento|windstuur|windvaan|stuurautomaat|vindroder|vindroder storlek|"
    "windror|vindror",
    "configuration.lower": "lower bracket|bottom bracket|lower mount|bracket lower|lower|untere halterung|halterung unten|"
    "unterer halter|support inférieur|support bas|support du bas|soporte inferior|supporto inferiore|onderste steun|"
    "onderste beugel|beugel onder|nedre fäste|nedre beslag|nedre brakett|nederste beslag",
    "configuration.upper": "upper bracket|top bracket|upper mount|bracket upper|upper|obere halterung|halterung oben|"
    "oberer halter|support supérieur|support haut|support du haut|soporte superior|supporto superiore|bovenste steun|"
    "bovenste beugel|beugel boven|övre fäste|övre beslag|øvre beslag|øvre brakett|øverste beslag",
    "configuration.shaft": "shaft|tube|shaft length|vertical tube|rohr|schaft|schaftlänge|welle|tube vertical|arbre|mât|"
    "longueur du tube|eje|tubo|albero|schacht|buis|as|axel|rör|aksel|rør",
    "placement.offset_mm": "offset|offset from centre|off centre|off centreline|versatz|seitlicher versatz|décalage|"
    "désaxage|desplazamiento|scostamento|disassamento|verschuiving|uit het midden|förskjutning|sidoförskjutning|"
    "forskydning|forskyvning",
    "placement.shaft_aft_mm": "shaft aft|shaft distance aft|distance shaft|abstand schaft|schaft achtern|"
    "distance du tube",
    "placement.lower_height_mm": "lower bracket height|height of lower bracket|lower collar height|höhe untere halterung|"
    "hauteur support inférieur|höjd nedre fäste",
    "placement.upper_height_mm": "upper bracket height|height of upper bracket|upper collar height|höhe obere halterung|"
    "hauteur support supérieur|höjd övre fäste",
    "placement.shaft_bottom_mm": "shaft bottom|bottom of shaft|shaft end|unterkante schaft|bas du tube",
    "outcome.fitted_as_proposed": "fitted as proposed|as proposed|as quoted|wie vorgeschlagen|comme proposé|"
    "como propuesto|come proposto|zoals voorgesteld|som föreslaget|som foreslået|som foreslått",
    "outcome.note": "remarks on fit|fitting notes|outcome|feedback|ergebnis|rückmeldung|retour|esito|resultado|uitkomst|"
    "utfall|resultat",
    "enquiry.reference": "enquiry|enquiry no|anfrage|anfragenummer|demande|consulta|richiesta|aanvraag|förfrågan|"
    "forespørgsel|forespørsel",
    "enquiry.country": "country|land|pays|país|paese",
    "enquiry.language": "language|sprache|langue|idioma|lingua|taal|språk|sprog",
    "contact.name": "owner|owner name|customer|customer name|client|contact|eigner|kunde|name eigner|propriétaire|"
    "cliente|propietario|armador|proprietario|armatore|eigenaar|klant|ägare|kund|ejer|eier",
    "contact.email": "email|e mail|mail|courriel|correo|posta elettronica|epost|e post",
    "contact.phone": "phone|telephone|mobile|tel|telefon|handy|téléphone|teléfono|telefono|telefoon|mobil",
    "boat.name": "boat name|name|yacht name|vessel|ship name|bootsname|schiffsname|nom du bateau|nom|nombre del barco|"
    "nombre|nome barca|nome|bootnaam|naam|scheepsnaam|båtnamn|namn|bådnavn|navn|båtnavn",
    "boat.model": "boat|boat type|boat model|type|model|design|class|bootstyp|typ|modell|boot|yacht|type de bateau|"
    "bateau|modèle|modelo|barco|tipo de barco|modello|barca|tipo barca|boottype|båttyp|båtmodell|bådtype|båttype",
    "boat.builder": "builder|yard|boatyard|manufacturer|make|werft|hersteller|chantier|constructeur|astillero|cantiere|"
    "werf|bouwer|varv|byggare|værft|verft|bygger",
    "boat.year": "year|year built|built|baujahr|bj|année|année de construction|año|año de construcción|anno|"
    "anno di costruzione|bouwjaar|byggår|årsmodell|årgang",
    "boat.sail_number": "sail number|sail no|segelnummer|numéro de voile|número de vela|numero velico|zeilnummer|"
    "segelnr|sejlnummer|seilnummer",
    "boat.hull_number": "hull number|hull no|build number|yard number|baunummer|rumpfnummer|numéro de coque|"
    "número de casco|numero di scafo|rompnummer|bouwnummer|skrovnummer|skrognummer",
    "boat.loa_mm": "loa|length|length overall|lüa|länge|länge über alles|longueur|longueur hors tout|lht|eslora|"
    "lunghezza|lunghezza fuori tutto|lft|lengte|lengte over alles|längd|längd över allt|længde|lengde",
    "boat.lwl_mm": "lwl|waterline length|wasserlinienlänge|flottaison|longueur à la flottaison|lunghezza galleggiamento",
    "boat.beam_mm": "beam|width|breite|largeur|bau|manga|larghezza|baglio|breedte|bredd|bredde",
    "boat.draft_mm": "draft|draught|tiefgang|tirant d'eau|calado|pescaggio|diepgang|djupgående|dybgang|dypgående",
    "boat.displacement_kg": "displacement|weight|verdrängung|gewicht|déplacement|poids|desplazamiento|peso|dislocamento|"
    "waterverplaatsing|deplacement|vikt|vægt|vekt|deplasement",
    "boat.hull_material": "hull material|material|rumpfmaterial|matériau|material del casco|materiale|materiale scafo|"
    "materiaal|romp materiaal|skrovmaterial|skrogmateriale",
    "boat.stern": "stern|transom type|type of transom|heck|heckform|heckart|poupe|arrière|type d'arrière|popa|"
    "tipo de popa|poppa|spiegeltype|achterschip|akter|aktertyp|hæk|hekk",
    "transom.top_height_mm": "transom height|height of transom|freeboard aft|spiegelhöhe|höhe spiegel|freibord achtern|"
    "hauteur tableau|hauteur du tableau|altura del espejo|altezza specchio|spiegelhoogte|hoogte spiegel|akterspegel höjd|"
    "höjd akterspegel|agterspejl højde|højde agterspejl|høyde akterspeil|akterspeil høyde",
    "transom.rake_deg": "rake|transom angle|transom rake|angle|spiegelwinkel|spiegelneigung|neigung|inclinaison|"
    "angle du tableau|inclinación|inclinazione|angolo|spiegelhoek|hoek|helling|lutning|vinkel|hældning|helling akterspeil",
    "transom.width_top_mm": "transom width|width of transom|spiegelbreite|largeur tableau|ancho del espejo|"
    "larghezza specchio|spiegelbreedte|spegelbredd|spejlbredde|speilbredde",
    "transom.thickness_mm": "thickness|transom thickness|skin thickness|spiegeldicke|laminatstärke|épaisseur|espesor|"
    "spessore|dikte|tjocklek|tykkelse",
    "notes": "notes|remarks|comments|comment|note|remark|bemerkung|bemerkungen|anmerkungen|notizen|remarques|"
    "observations|observaciones|notas|osservazioni|opmerkingen|anteckningar|anmärkning|bemærkninger|merknader",
    "obstacles": "obstacles|on the stern|hindernisse",
}
"""For each column what else lists call it, divided by bars."""

VALUES: dict[str, dict[str, str]] = {
    "record.status": {
        "proposed": "proposed|quoted|quote|offer|offered|angebot|angeboten|devis|offre|oferta|offerta|offerte|offert|tilbud",
        "shipped": "shipped|delivered|sent|geliefert|versandt|livré|expédié|enviado|entregado|spedito|consegnato|geleverd|"
        "verzonden|levererad|skickad|leveret|sendt|levert",
        "installed": "installed|fitted|mounted|done|eingebaut|montiert|installé|posé|monté|instalado|montado|installato|"
        "montato|geplaatst|ingebouwd|gemonteerd|installerad|monterad|installeret|monteret|installert|montert",
        "withdrawn": "withdrawn|cancelled|canceled|storniert|annulliert|zurückgezogen|annulé|retiré|anulado|retirado|"
        "annullato|ritirato|geannuleerd|annullerad|annulleret|kansellert|trukket",
    },
    "boat.stern": {
        "plumb": "plumb|upright|vertical|senkrecht|gerade|droit|vertical|recto|dritto|verticale|recht|rak|lige|rett",
        "raked": "raked|counter|positive|positiv|überhängend|classique|lanzado|classico|overhangend|överhängande",
        "reverse": "reverse|reversed|negative|negativ|inversé|invertido|negativo|rovescio|negatief|omvänd|negativt",
        "scoop": "scoop|sugar scoop|badestufe|heckstufe|jupe|jupette|à jupe|zwemtrap|badsteg|badeplatform|badeplattform",
        "open": "open|offen|ouvert|abierto|abierta|aperto|aperta|öppen|öppet|åben|åbent|åpen|åpent",
        "double_ended": "double ended|double ender|canoe|spitzgatter|spitzgatt|kanuheck|norvégien|pointu|doble proa|"
        "doppia prora|spitsgatter|kanotakter|spetsgattad|spidsgatter|spissgatter",
    },
    "boat.hull_material": {
        "frp_solid": "grp|frp|gfk|polyester|fibreglass|fiberglass|prv|vetroresina|gap|plast|glasfiber|glassfiber|solid",
        "frp_cored": "sandwich|cored|balsa|foam",
        "wood": "wood|wooden|timber|holz|bois|madera|legno|hout|trä|træ|tre",
        "aluminium": "aluminium|aluminum|alu|alloy|aluminio|alluminio",
        "steel": "steel|stahl|acier|acero|acciaio|staal|stål",
    },
    "outcome.fitted_as_proposed": {
        "true": "yes|y|ja|j|oui|o|sí|si|sì|x|true",
        "false": "no|n|nein|non|nee|nej|nei|false",
    },
}
"""For each column what words in its cells stand for."""
