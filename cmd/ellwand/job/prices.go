package job

import "ellwand/fabric/cloth"

// Offered is a cloth that a shop offers. What it does not say is as its cloth
// has it.
type Offered struct {
	Name         Text                `yaml:"name" jsonschema:"required" jsonschema_description:"what tells it apart: the shop, the quality"`
	Width        Measure             `yaml:"width" jsonschema_description:"full width from selvedge to selvedge"`
	Selvedge     Measure             `yaml:"selvedge" jsonschema_description:"not to be cut into, on each side"`
	Nap          Choice[cloth.Nap]   `yaml:"nap" jsonschema_description:"which way pieces may point"`
	Step         Measure             `yaml:"step" jsonschema_description:"what the shop rounds a purchase up to"`
	Minimum      Measure             `yaml:"minimum" jsonschema_description:"the least that the shop cuts"`
	Fibre        Choice[cloth.Fibre] `yaml:"fibre" jsonschema_description:"what it is made of"`
	Shrinkage    *Shrinkage          `yaml:"shrinkage" jsonschema_description:"what it loses in the first wash"`
	Price        Text                `yaml:"price" jsonschema_description:"of a metre, or a yard in a job in inches: 18.50; or: 18.50 per yd"`
	Remnant      Measure             `yaml:"remnant" jsonschema_description:"length of a remnant that the shop also has, sold whole"`
	RemnantPrice Text                `yaml:"remnant_price" jsonschema_description:"what the remnant costs"`
}

// Notion is a thing bought by count.
type Notion struct {
	Name  Text  `yaml:"name" jsonschema:"required" jsonschema_description:"zip 55 cm, buttons, thread"`
	Count Count `yaml:"count" jsonschema_description:"how many; 1 if not given"`
	Price Text  `yaml:"price" jsonschema:"required" jsonschema_description:"of one"`
}

// Making is work, by the hour or for a fixed sum.
type Making struct {
	Name  Text `yaml:"name" jsonschema_description:"what the quote calls it: fittings, alterations"`
	Hours Text `yaml:"hours" jsonschema_description:"6.5 or 6:30"`
	Rate  Text `yaml:"rate" jsonschema_description:"for an hour; the quote's if not given"`
	Sum   Text `yaml:"sum" jsonschema_description:"a fixed sum, in place of hours"`
}

// Quote is what a quote says beside the cloths and garments.
type Quote struct {
	Number     Text     `yaml:"number" jsonschema_description:"the quote's own number"`
	Maker      []Text   `yaml:"maker" jsonschema_description:"the maker's name, then the lines of an address"`
	Date       Text     `yaml:"date" jsonschema_description:"year-month-day; today if not given"`
	ValidUntil Text     `yaml:"valid_until" jsonschema_description:"year-month-day"`
	ValidDays  Count    `yaml:"valid_days" jsonschema_description:"days from the date, in place of valid_until"`
	Rate       Text     `yaml:"rate" jsonschema_description:"for an hour of making, where it does not say its own"`
	Making     []Making `yaml:"making" jsonschema_description:"work for the whole job: fittings, delivery"`
	Notions    []Notion `yaml:"notions" jsonschema_description:"notions for the whole job"`
	Margin     Text     `yaml:"margin" jsonschema_description:"added to the price of the cloths, for contingencies: 10 %"`
	Tax        *Tax     `yaml:"tax" jsonschema_description:"the tax on the whole"`
	Deposit    Text     `yaml:"deposit" jsonschema_description:"share of the total to be paid beforehand: 40 %"`
	Terms      []Text   `yaml:"terms" jsonschema_description:"your terms in your own words, a paragraph each"`
}

// Tax on the whole quote.
type Tax struct {
	Name     Text  `yaml:"name" jsonschema_description:"VAT, sales tax; tax if not given"`
	Rate     Text  `yaml:"rate" jsonschema:"required" jsonschema_description:"21 %"`
	Included YesNo `yaml:"included" jsonschema_description:"yes when every price includes it already"`
}

// Wearer is one of several bodies.
type Wearer struct {
	Name  Text `yaml:"name" jsonschema:"required" jsonschema_description:"who wears it"`
	Size  Text `yaml:"size" jsonschema_description:"as at the top, for this wearer"`
	Table Text `yaml:"table" jsonschema_description:"as at the top, for this wearer"`
	Body  Body `yaml:"body" jsonschema_description:"as at the top, for this wearer"`
}
