"""Spanish: what is measured, from where, which way and by what."""

WORDS = {
    "LENGTH": "de eslora total|largo|de eslora|de largo",
    "HEIGHT": "altura|alto|alto de|altura de|francobordo|alturas|alzada|elevación|en altura|de alto|de altura",
    "WIDTH": (
        "anchura|ancho|ancho de|anchura de|ancha|anchura del espejo|ancho del espejo|anchuras|anchos|"
        "de lado a lado|de banda a banda|a lo ancho|de un lado a otro|transversalmente|de través|de ancho|"
        "de anchura"
    ),
    "THICK": (
        "espesor|grosor|grueso|grueso de|espesores|gruesos|gruesa|grosores|espesor total|espesor del casco|"
        "espesor del espejo|grosor del espejo|gordo|espesor de chapa|de espesor|de grosor|de grueso"
    ),
    "DEPTH": (
        "de proa a popa|de fondo|de delante atrás|de delante a atrás|en sentido longitudinal|profundidad|fondo|"
        "profundo|profunda|de profundidad"
    ),
    "LOA": (
        "eslora|eslora total|eslora máxima|longitud total|eslora casco|eslora del casco|largo total|"
        "eslora de casco|eslora max|eslora máx|e.t|longitud|longitud del barco|largo|largo del barco|"
        "metros de eslora|eslora entera|l.o.a|loa"
    ),
    "LWL": "eslora en flotación|eslora de flotación|eslora flotación",
    "BEAM": (
        "manga|manga máxima|ancho máximo|manga total|ancho del barco|anchura máxima|manga max|manga máx|"
        "ancho total|manga de|mangas|bmax"
    ),
    "DRAFT": "calado|calados|calado máximo|cala|calado de|calado del",
    "DISPLACEMENT": (
        "desplazamiento|peso|pesa|desplaza|pesando|peso total|peso en carga|desplazando|pesar|toneladas de peso|"
        "grúa|pesado|desplazamientos|pesaba|peso en rosca|peso vacío|peso máximo|travelift|en la báscula|pesó|"
        "peso del barco|desplaza unas|desplazamiento en rosca|desplazamiento ligero|tonelaje|"
        "toneladas de desplazamiento"
    ),
    "BALLAST": "lastre|motor|auxiliar|quilla|bulbo|neumática|ancla|tripulación|dinghy|plomo",
    "RAKE": (
        "inclinación|ángulo|inclinado|grados de inclinación|caída|inclinación del espejo|lanzamiento|pendiente|"
        "respecto a la vertical|con la vertical|desde la vertical|ángulo del espejo|"
        "grados con respecto a la vertical|ángulo de inclinación|inclinaciones|desplome|caída de popa|"
        "respecto de la vertical|fuera de la vertical"
    ),
    "LEAN": (
        "inclinado|inclinada|se inclina|inclina|cae|se tumba|tumbado|lanzado|tiene una inclinación|inclinados|"
        "ladeado|caído|tumbada|inclinadas|ladeada|lanzada|va inclinado|va inclinada|se echa|echado|echada|"
        "vencido|sesgado|oblicuo"
    ),
    "TURN": (
        "a cada banda|giro máximo|giro|a cada lado|por banda|ángulo máximo|a ambas bandas|gira|giro del timón|"
        "a babor y estribor|hacia cada lado|hacia cada banda|ángulo de timón|máximo giro|ángulo de giro|topes|"
        "ángulo de pala|a cada borda|giro de|caña a la banda|metida máxima|gira hasta"
    ),
    "FORWARD": (
        "hacia proa|más a proa|por delante|hacia delante|a proa|más adelante|hacia adelante|delante|delante del|"
        "adelantado|por delante del|más hacia proa|a proa del|por la proa|hacia la proa|más adelantado|"
        "por delante de|delante de|a proa de|hacia dentro|hacia el interior|adelantada|más adelantada|antes del|"
        "proel|hacia adentro|a proa respecto|antes de llegar al"
    ),
    "AFT": (
        "hacia popa|más a popa|por detrás|hacia atrás|por detrás del|a popa|más atrás|detrás|detrás del|atrás|"
        "retrasado|más hacia popa|a popa del|por la popa|hacia la popa|por detrás del espejo|a popa de|"
        "más a popa que|detrás de|por detrás de|hacia fuera|más atrasado|atrasado|atrasada|retrasada|"
        "más retrasado|a popa respecto|tras el espejo|más allá del|hacia afuera|por fuera|hacia detrás|"
        "más allá de"
    ),
    "TOP": (
        "la cubierta está|la cubierta queda|canto de cubierta|borde de cubierta|canto de la cubierta|"
        "borde de la cubierta|canto de la borda|cabeza del codaste|borde del espejo|canto del espejo|"
        "hasta la cubierta|a la cubierta|sube hasta|llega hasta|canto alto|parte superior|borde superior|"
        "canto superior|parte alta|borde de arriba|canto de arriba|arriba|borde alto|parte de arriba|lo alto|"
        "el de arriba|la parte alta|extremo superior|borde superior del espejo|superior|punto más alto|"
        "extremo alto|cima|remate|remate superior|filo superior|lado alto|lado superior|arista superior|"
        "coronación|tapa del espejo|el alto|parte más alta|en lo alto|en la parte alta|coronamiento|"
        "parte alta del espejo|canto superior del espejo|por arriba|el superior|cabeza del timón|"
        "cabeza del timon|parte alta del timón|cabeza de la pala|de la cubierta|desde la cubierta|cubierta|"
        "de cubierta"
    ),
    "BOTTOM": (
        "baja hasta|llega por abajo|parte inferior|borde inferior|canto inferior|borde de abajo|canto de abajo|"
        "abajo|canto bajo|borde bajo|parte baja|el de abajo|extremo inferior|parte de abajo|pie del espejo|"
        "inferior|punto más bajo|extremo bajo|filo inferior|lado bajo|lado inferior|arista inferior|el bajo|"
        "parte más baja|en la parte baja|base|base del espejo|pie|parte baja del espejo|"
        "canto inferior del espejo|borde inferior del espejo|por abajo|fondo del espejo|el inferior|"
        "pie del timón|parte baja del timón|talón del timón"
    ),
    "WATER": (
        "en el agua|agua|línea de flotación|flotación|lámina de agua|superficie|superficie del agua|"
        "nivel del agua|lin flotación|francobordo|bajo el agua|por debajo del agua|bajo la flotación|"
        "por debajo de la flotación|debajo del agua|por debajo de la línea de flotación|"
        "bajo la línea de flotación|a ras de agua|a ras del agua|justo en el agua|toca el agua|"
        "en la línea de flotación|en la flotación|a flor de agua|justo en la flotación|a nivel del agua|"
        "línea de agua|línea de agua de proyecto|nivel del mar|superficie del mar|el mar|lámina|línea flotación|"
        "aguas|nivel de agua|espejo del agua|línea de flotacion|plano de flotación|francobordos|lf|ras del agua|"
        "bajo la superficie|por debajo de la superficie|sumergido|sumergida|sumergidos"
    ),
    "AT_WATER": (
        "a ras de agua|a ras del agua|justo en el agua|toca el agua|en la línea de flotación|en la flotación|"
        "a flor de agua|justo en la flotación|a nivel del agua"
    ),
    "JUST_TOUCH": "roza|coincide",
    "BELOW": (
        "metido|metida|en el agua|bajo el agua|por debajo del agua|sumergido|sumergida|bajo la flotación|"
        "por debajo de la flotación|debajo del agua|por debajo de la línea de flotación|"
        "bajo la línea de flotación|por debajo|bajo la superficie|por debajo de la superficie|sumergidos"
    ),
    "BOOTSTRIPE": "franja de flotación|línea de agua pintada|franja",
    "TOERAIL": (
        "regala|tapa de regala|amurada|cintón|carril de regala|tapa regala|tapa de la regala|regalas|"
        "batayola de teca|listón|cinta de teca|galón"
    ),
    "COCKPIT": "bañera|piso de la bañera|suelo de la bañera|fondo de la bañera|plan de la bañera|borde de la bañera",
    "STEP": (
        "escalón|peldaño|escalones|peldaños|escalón de baño|escalón moldeado|plataforma moldeada|"
        "plataforma integrada|plataforma de baño integrada|plataforma de baño moldeada|faldón|escalón integrado"
    ),
    "ENDS": "termina|acaba|se acaba|finaliza|terminan|acaban|se corta|se termina|acabe",
    "STICK_OUT": (
        "saca|sale hacia atrás|sobresale|asoma|sale|saliente|sobresaliendo|se proyecta|sobresalen|sobresalir|"
        "vuela|asoma por|se extiende|saliendo|rebasa|sale por|sobresale por|asomando|vuelo|sobrepasa|se sale|"
        "queda fuera|se asoma|sobresale más|donde más sobresale"
    ),
    "M_TAPE": (
        "cinta métrica|metro|con metro|con cinta|cinta|flexómetro|cinta de medir|metro de carpintero|"
        "con el metro|con la cinta|cinta de carpintero|metro de cinta|con flexómetro|con un metro|metro plegable|"
        "huincha|cinta metrica"
    ),
    "M_PHONE": (
        "teléfono móvil|nivel del móvil|app del móvil|con el móvil|aplicación|nivel del teléfono|"
        "nivel del iphone|app de nivel|con el teléfono|aplicación del móvil|nivel del smartphone|"
        "inclinómetro del móvil|móvil apoyado|con el smartphone|aplicación de nivel|una app|app|con una app"
    ),
    "M_INCL": "inclinómetro|clinómetro|transportador|nivel digital",
    "M_LASER": "láser",
    "M_DRAWING": (
        "plano|planos|dibujo|del plano|planos del astillero|plano de formas|plano del astillero|plano velico|"
        "plano vélico|según plano|según planos|sobre plano|dibujos|planos de construcción|planos originales|"
        "plano original|sacado del plano|plano de disposición|plano de líneas"
    ),
    "M_BROCHURE": (
        "folleto|ficha técnica|catálogo|según el astillero|manual|según fábrica|según astillero|"
        "datos del astillero|según fabricante|según el fabricante|documentación|según folleto|según el folleto|"
        "según catálogo|según la ficha|papeles del barco|según papeles|según los papeles|hoja de asiento|"
        "permiso de navegación|especificaciones|según el manual|en el folleto|prospecto|certificado de medición"
    ),
    "M_GUESS": (
        "a ojo|estimado|estimada|calculo a ojo|estimación|a ojo de buen cubero|al tanteo|estimo|a simple vista|"
        "más o menos a ojo|aproximado a ojo|de memoria|a bulto|a vista|al tuntún|a grosso modo|por la vista|"
        "estimados|calculado a ojo|según mi ojo"
    ),
    "M_PHOTO": "foto|fotos|fotografía",
    "MEASURED": "medidas|medido|medida|medí|mediciones|tomadas|he medido|dimensiones",
    "PLUMB_LINE": (
        "plomada|hilo de plomada|hilo a plomo|con plomada|con una plomada|hilo de plomo|cordel|peso en un hilo|"
        "sedal con plomo"
    ),
    "GIVE_TAKE": (
        "más o menos|más menos|con un error de|con un margen de|margen de|tolerancia de|arriba o abajo|"
        "precisión de|con una tolerancia de|con un error|incertidumbre de|margen de error de"
    ),
}
