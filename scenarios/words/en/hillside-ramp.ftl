name-oxygen = oxygen concentrator
name-outlet-oxygen = oxygen outlet
name-stair-lift = stair lift
name-outlet-stair-lift = stair lift
name-powered-bed = powered bed
name-outlet-powered-bed = bed outlet
event-lost-oxygen = The battery of the oxygen concentrator is empty. Somebody goes without oxygen.
