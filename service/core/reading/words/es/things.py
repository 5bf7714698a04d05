"""Spanish: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": (
        "escalera|escalera de baño|escalerilla|escala|escaleras|escala de baño|escalera de baños|"
        "escalerilla de baño|escala de popa|escalera de popa|escalera inox|escalerillas|escala de gato|"
        "escalera de bañistas|escalera de mano"
    ),
    "O_PLATFORM": (
        "plataforma|plataforma de baño|plataformas|bañera de baño|plataforma de popa|plataforma fija|"
        "plataforma de buceo|plataformas de baño|enjaretado|teca de popa|plataforma popera|"
        "plataforma para bañarse|plataforma trasera"
    ),
    "O_DAVITS": (
        "pescantes|pescante|pescantes de popa|grúas para el auxiliar|serviolas|pescantes para el auxiliar|"
        "pescantes de la neumática|pescantes de la zódiac|davits|grúa de la auxiliar|pescantes del dinghy|"
        "portaauxiliar"
    ),
    "O_OUTBOARD": (
        "fueraborda|fuera borda|motor fueraborda|motor auxiliar fueraborda|soporte de fueraborda|"
        "soporte del fueraborda|motor fuera borda|soporte para fueraborda|motor auxiliar en|soporte motor|"
        "soporte del motor|fueraborda eléctrico|fuerabordas|soporte de motor|motor eléctrico de popa|"
        "bancada del fueraborda|fuera bordas"
    ),
    "O_EXHAUST": (
        "escape|salida de escape|escape del motor|tubo de escape|escapes|salida del escape|boca de escape|"
        "escape húmedo|tubo del escape|pasacascos del escape|salida de gases|salida de los gases"
    ),
    "O_RAIL": (
        "púlpito de popa|balcón de popa|púlpito|balcón|barandilla|candeleros de popa|balcón popa|"
        "balcones de popa|púlpitos|púlpitos de popa|balcones|pasamanos de popa|barandillas|barandilla de popa|"
        "púlpito abierto|púlpito partido|batayola"
    ),
    "O_STAY": (
        "backstay|estay de popa|estay popero|backstays|burdas|backstay doble|pata de gallo|estay de popa doble|"
        "estay de popa partido|backstay partido|burda|tensor de backstay|back stay|back stays|doble backstay|"
        "estayes de popa|estay doble|cadenote del backstay|contraestay|popel|baquestay|baquestays"
    ),
    "O_BOOM": (
        "botavara de mesana|botavara|pico de la botavara|botavaras|botavara de la mesana|extremo de la botavara|"
        "botavara mayor|puño de la botavara|botavara del mesana"
    ),
    "O_ARCH": (
        "arco|arco de popa|arco radar|arco de acero|arco inox|arco solar|arco trasero|arco de acero inoxidable|"
        "arco inoxidable|arco de antenas|arcos|pórtico|pórtico de popa|arco portaplacas|targa|arco de placas|"
        "arco de inox|roll bar|portasolar|arco en popa"
    ),
    "O_PANELS": (
        "placas solares|paneles solares|panel solar|placa solar|paneles|placas fotovoltaicas|"
        "paneles fotovoltaicos|placas|solares|placa fotovoltaica|fotovoltaica"
    ),
    "O_MAST": (
        "aerogenerador|palo de radar|palo del aerogenerador|generador eólico|mástil de radar|aerogeneradores|"
        "palo del radar|mástil del radar|generador de viento|poste del aerogenerador|palo de antenas|"
        "mástil de antenas|palito del radar|turbina eólica|antena del gps|antena gps|tubo con la antena|"
        "tubo de la antena|palo de la antena|poste de antena|antena vhf|antena ais|seta del gps"
    ),
    "O_PASSERELLE": (
        "pasarela|pasarelas|plancha de embarque|pasarela de popa|tabla de desembarco|pasarelita|plancha de desembarque"
    ),
    "O_BOOMKIN": (
        "botalón de popa|batículo|arbotante|botalón trasero|botalón de mesana|tangón de popa|baupré de popa|botalón"
    ),
    "O_STAFF": "asta|asta de bandera|mástil de bandera|asta de la bandera|palo de bandera|porta bandera|astabandera",
    "O_OTHER": "barbacoa|bbq|parrilla|cañeros|portacañas|ancla de popa|ancla trasera",
    "O_LOCKER": (
        "cofre de gas|balsa salvavidas|tambucho|cofre de popa|cofre del gas|soporte de la balsa|caja del gas|"
        "cajón de popa"
    ),
    "EMPTY": "vacío|vacía|en rosca|sin carga|descargado|sin cargar",
    "LADEN": (
        "cargado|cargada|a plena carga|con carga|en orden de marcha|por debajo de sus líneas|"
        "por debajo de su flotación de proyecto|más hundido que en el plano"
    ),
    "SINKS": (
        "se hunde|más hundido|más hundida|baja|más bajo|más baja|por debajo de sus líneas|"
        "por debajo de su flotación de proyecto|más hundido que en el plano"
    ),
    "CAMBER": "curvatura|flecha|abombado|abombamiento|bombeo",
    "FOLD": (
        "que se levanta|para plegar|plegable|abatible|plegables|abatibles|se abate|se pliega|plegado|rebatible|"
        "que se abate|que se pliega|basculante|se levanta|retráctil|se recoge|se pliegan|se abaten|se levantan|"
        "que se recoge|abatida|plegada|abatido|basculantes|rebatibles|se rebate|con bisagras|sube y baja|"
        "levadiza|levadizo|plegar|abatir|se puede plegar|se puede abatir|se puede levantar|se puede subir|"
        "puede plegarse|puede abatirse|que se sube|que se baja|articulada|articulado|recogible|elevable|doblable|"
        "se dobla|replegable"
    ),
    "FIXED": (
        "fija|fijo|soldado|fijas|fijos|atornillada|atornillado|soldada|rígida|rígido|remachada|firme|"
        "plataforma fija|no plegable|no abatible|soldados|atornillados|no se pliega|no se abate|no se levanta|"
        "inamovible|soldadas|rígidos|rígidas|empernado|empernada|no plegables|fijo soldado|no se puede plegar|"
        "no se puede abatir"
    ),
    "REMOVE": (
        "podemos prescindir|puedo prescindir|podríamos prescindir|se puede mover|se puede cambiar de sitio|"
        "puede ir en otro sitio|se desmontará|se desmontarán|se quitará|se quitarán|desmontable|se puede quitar|"
        "desmontables|puede quitarse|se puede desmontar|se pueden quitar|podemos quitar|puedo quitar|removible|"
        "se podría quitar|puede desmontarse|se pueden desmontar|se puede retirar|podría ir fuera|prescindible|"
        "prescindibles|no hace falta|no es imprescindible|no necesitamos|no necesito|sobra|sobran|extraíble|"
        "extraíbles|amovible|se quita|se quitan|se desmonta|se desmontan|en venta|se va|se irá|podría irse|"
        "puede irse|pueden irse|puede desaparecer|de quita y pon|quita y pon|movible|trasladable|puede salir|"
        "se puede prescindir|removibles|se retira|se retirará|opcional|se saca|se sacan|puede ir en el cofre|"
        "se puede guardar|puede quedarse en tierra|ya no necesito|ya no necesitamos|ya no hace falta"
    ),
    "KEEP": (
        "mucho cariño|tenemos cariño|tengo cariño|mucho aprecio|no queremos prescindir|no quiero prescindir|"
        "no queremos perderlo|no queremos perderla|seguir usando|seguir utilizando|seguir usándola|"
        "no queremos quitar|no quiero quitar|no queremos perder|no se quitan|debe quedarse|se queda|conservar|"
        "tienen que quedarse|tiene que quedarse|deben quedarse|queremos conservar|quiero conservar|mantener|"
        "conservarla|conservarlo|ha de quedarse|tiene que seguir|debe seguir|no se puede quitar|"
        "no se puede desmontar|queremos mantener|quiero mantener|imprescindible|debe permanecer|se quedan|"
        "no se toca|hay que conservar|no se pueden quitar|permanece|permanecen|se mantiene|se conserva|"
        "se conservan|queremos que siga|debe seguir ahí|dejarlo|dejarla|dejar donde está|intocable|innegociable|"
        "no negociable|no se mueve|mantenerla|mantenerlo|tiene que estar|no prescindimos|no podemos prescindir|"
        "no puedo prescindir|conservamos|conservo|conserva|imprescindibles|seguirá|seguirán|se quedará|"
        "se quedarán|quiero que se quede|queremos que se quede|que se quede|que se queden|se quede|se queden|"
        "no se puede tocar|no se pueden tocar|no se tocan|no lo quito|no la quito|no los quito|no las quito|"
        "ese no se quita|esa no se quita|no lo saco|no la saco|no lo quitamos|no la quitamos|no lo toco|"
        "es mi único|la necesitamos|lo necesitamos|los necesitamos|las necesitamos|la necesito|lo necesito|"
        "nos hace falta|la usamos|lo usamos|me la quedo|me lo quedo|nos la quedamos|nos lo quedamos|se conservará"
    ),
    "PORT": (
        "babor|a babor|banda de babor|izquierda|lado de babor|a la izquierda|por babor|a la banda de babor|"
        "lado izquierdo|en babor|costado de babor|aleta de babor|por la izquierda|parte de babor|lado babor|"
        "banda babor|esquina de babor|babor popa"
    ),
    "STARBOARD": (
        "estribor|a estribor|banda de estribor|derecha|lado de estribor|a la derecha|por estribor|"
        "a la banda de estribor|lado derecho|en estribor|costado de estribor|aleta de estribor|por la derecha|"
        "parte de estribor|lado estribor|banda estribor|esquina de estribor|estribor popa"
    ),
    "CENTRE": (
        "centro|crujía|en el centro|línea de crujía|central|del centro|en medio|en crujía|eje|centrada|centrado|"
        "desde crujía|de la crujía|a crujía|al centro|centrada en|fuera de crujía|línea central|desde el centro|"
        "eje longitudinal|eje central|del eje|desde el eje|línea media|plano de crujía|justo en medio|"
        "en el medio|al medio|de crujía"
    ),
    "EACH_SIDE": (
        "a cada lado|por cada banda|a ambos lados|a ambas bandas|en cada banda|uno a cada banda|en ambas bandas|"
        "en ambos lados|a babor y a estribor|babor y estribor|en cada lado|por ambos lados|uno por banda|"
        "a ambos costados|a una y otra banda|a izquierda y derecha|uno en cada banda|cada lado|ambos lados|"
        "a cada banda|a cada lado del centro|a cada lado de crujía"
    ),
    "PREFER": (
        "me gustaría montarlo|nos gustaría montarlo|querríamos|preferimos|prefiero|preferiría|"
        "preferimos montarlo|preferencia|preferible|preferiríamos|mejor|nos gustaría|me gustaría|a ser posible|"
        "si es posible|preferiría que|preferirían|le gustaría|les gustaría|mejor que vaya|querría|querría que|"
        "de preferencia|queremos|quiero|deseamos|desearíamos|quisiera|quisiéramos|nos vendría mejor|"
        "me viene mejor|nos viene mejor|me vendría mejor|sería lo mejor|lo quiere|la quiere|lo querría|lo quiero|"
        "lo queremos|la queremos|lo quisiera|lo quieren|mejor para nosotros|si puede ser|a poder ser"
    ),
    "SLIDE": (
        "telescópica|corredera|extensible|deslizante|telescópicas|que se desliza|se desliza|extraíble de|"
        "corredero|retráctiles|telescópico|deslizable|como un cajón|tipo cajón"
    ),
    "SWING": (
        "giratoria|orientable|pivotante|giratorio|giratorios|orientables|pivotantes|que gira|giran|pivota|"
        "se gira|barre|barriendo|bascula de lado"
    ),
    "AVOID": "en ningún caso|evitar|nunca en|evitando|de ninguna manera",
    "GONE": (
        "ya no están|ya no está|ya no lleva|ya no llevamos|ya no llevo|ya vendido|ya vendidos|ya desmontado|"
        "ya desmontados|ya desmontada|ya quitado|ya quitados|ya quitada|ya no tiene|ya no tenemos|"
        "ya no los tenemos|ya no la tenemos|lo vendimos|la vendimos|está desmontado|está desmontada|en el cofre|"
        "en un cofre|guardamos|guardo en|va guardado|va guardada|guardado en|guardada en|estibado|estibada|"
        "se queda en tierra|ya la saqué|la saqué|lo saqué|la quité|lo quité|ya no hay|la hemos quitado|"
        "lo hemos quitado|fue retirada|la sacamos|la quitamos|los quitamos|ya no existe|ya no tengo|desapareció|"
        "desaparecieron|en el garaje|en casa|en tierra|guardado|guardada|guardados|guardadas|en el pañol|"
        "se guarda|del antiguo dueño|es historia|pasó a la historia|bajo cubierta|ya no quedan|fueron para|"
        "se los quedó|se lo quedó|regalados a|aún no montado|todavía no montado|encargado"
    ),
    "BESIDE": "junto al|junto a|al lado del|al lado de la|cerca del|cerca de la",
    "BEGIN": "empieza|comienza|a partir de|arranca",
    "EXCEPT": "salvo|excepto|aparte de|solo|sólo|únicamente",
    "OFF": (
        "quitar|quitarlo|quitarla|quitarlos|quitarlas|desmontar|desmontarlo|desmontarla|desmontarlos|retirar|"
        "retirarlo|retirarla|eliminar|suprimir|desatornillar|sacar|sacarlo|sacarla|vender|vendemos|venderlo|"
        "venderla|prescindir|trasladar|quitaremos|quitaré|quitaríamos|quitaría|desmontaremos|desmontaré|"
        "retiraremos|quito|desmonto|sacrificar|deshacernos|deshacerme|venderán|venderá|venderemos|venderé|"
        "quitarán|quitará|desmontarán|desmontará|retirarán|renunciar|se puede mover|perder|perderla|perderlo"
    ),
    "OFFED": (
        "quitado|quitada|quitados|quitadas|quité|desmontado|desmontada|desmontados|desmontadas|desmonté|retirado|"
        "retirada|retirados|retiradas|eliminado|eliminada|suprimido|vendido|vendida|vendidos|vendidas|vendí|"
        "vendimos|sacado|sacada|se quitaron|quitaron|se desmontaron|desmontaron|se vendieron|vendieron|"
        "se retiraron|retiraron|se quitó|se desmontó|se vendió|se retiró|desembarcado|desembarcada|desembarcados|"
        "regalado|regalada|regalados|regalé|regalamos|tirado|tirada|tirados|desguazado|donado|donados|saqué|"
        "sacamos|sacados|arrancado|arrancada|cortado|cortada|corté|cortamos|se pudrió|podrido|podrida|se rompió|"
        "tiré|tiramos|desechado|cedido|cedidos|vendidos ya"
    ),
    "MAY": (
        "puede|pueden|podría|podrían|podríamos|podemos|puedo|será|serán|sería|va|van|voy|vamos|quiero|queremos|"
        "pensamos|pienso|previsto|dispuesto|dispuestos|posible|fácil|fácilmente|fácil de|tiene que ser|habría|"
        "habrá|hay que|debe ser|pensado"
    ),
    "EASILY": (
        "sin problema|sin problemas|sin dificultad|sin ningún problema|no hay problema|ningún problema|sin más|"
        "sin herramientas|no estorba|no estorban|no molesta|de en medio|quitar de en medio"
    ),
    "SHIFTED": "trasladado|trasladada|movido|movida",
    "STAY": "quedarse|quedar|permanecer|seguir",
    "DOWNWARD": (
        "bajando|hacia abajo|más abajo|al bajar|bajando desde arriba|si bajamos|si se baja|por debajo del canto"
    ),
    "EVEN": (
        "a plomo con|a plomo del|justo debajo|justo debajo de|exactamente debajo|en la vertical del|"
        "en la vertical de|alineado con|enrasado con|a ras del|en línea con|justo bajo|alineada con|"
        "en el mismo plano"
    ),
    "TAKE_THIS": (
        "tomen ese|tomen esa|tome ese|tomad ese|usen ese|use ese|quédense con ese|ese es el bueno|"
        "esa es la buena|cojan ese|usad ese|vale ese|ese vale|la buena es|el bueno es|tomen esta"
    ),
    "AXIS": "el eje|eje|su eje",
    "LOATH": "daría pena|da pena|lástima|a regañadientes|dolería|sentiríamos|fastidiaría|nos costaría",
    "DROP": (
        "diferencia de altura|desnivel|altura entre|distancia vertical|medido en vertical|medidos en vertical|"
        "en vertical|medido a plomo|medidos a plomo|altura vertical|de canto a canto|verticalmente|"
        "medida en vertical|entre el canto superior y el inferior|de canto superior a inferior|entre ambos cantos"
    ),
    "ZERO": "nula|nulo|cero",
}
