# Evaluación: criterios, hallazgos, etapas, fuentes.
