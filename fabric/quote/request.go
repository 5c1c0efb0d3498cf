package quote

import (
	"time"

	"ellwand/fabric/plan"
	"ellwand/pieces"
)

// Request is all that a quote is made from.
type Request struct {
	// Number, Job and Client head the quote; Maker is the maker's name, then
	// the lines of an address. Each may be empty.
	Number, Job, Client string
	Maker               []string
	Date, ValidUntil    time.Time // ValidUntil may be zero
	Currency            Currency
	Units               Units
	Garments            []Garment
	Cloths              []ClothRequest
	Notions             []Notion
	Making              []Work
	// Margin is added to the price of the cloths, for contingencies.
	Margin Share
	// Tax; nil for none.
	Tax *Tax
	// Deposit is the share of the total to be paid beforehand.
	Deposit Share
	Terms   []string // paragraphs in the maker's own words
	// Ended says whether the searches for lays were ended early.
	Ended plan.Ended
}

// Garment is one kind of garment that is made.
type Garment struct {
	Name, Wearer string // Wearer may be empty
	Quantity     int
	Pieces       []pieces.Piece // for the picture
}

// ClothRequest is a cloth, bought for all garments at once.
type ClothRequest struct {
	Cloth  string // its name in the job: "shell"
	Option Option // how it is bought
	// Notes for the maker: what else the amount rests on, a sentence each.
	Notes []string
}

// Notion is a thing that is bought by count: a zip, buttons, thread.
type Notion struct {
	Name  string
	Count int
	Price Money // of one
}

// Work is making, by the hour or for a fixed sum.
type Work struct {
	Name    string
	Minutes int
	PerHour Money
	Sum     Money // when Minutes is 0
}

// Cost of the work.
func (w Work) Cost() Money {
	if w.Minutes > 0 {
		return ForMinutes(w.PerHour, w.Minutes)
	}
	return w.Sum
}

// Tax on the whole: added, or included in every price.
type Tax struct {
	Name     string
	Rate     Share
	Included bool
}
