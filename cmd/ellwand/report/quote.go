package report

import (
	"time"

	"ellwand/fabric/quote"
)

// Quote is what quote prints as JSON. Money is text, so that no reader
// makes a float of it.
type Quote struct {
	Number     string   `json:"number,omitempty"`
	Job        string   `json:"job"`
	Client     string   `json:"client,omitempty"`
	Date       string   `json:"date"`
	ValidUntil string   `json:"valid_until,omitempty"`
	Currency   string   `json:"currency"`
	Lines      []Line   `json:"lines"`
	Subtotal   string   `json:"subtotal"`
	Tax        *Tax     `json:"tax,omitempty"`
	Total      string   `json:"total"`
	Deposit    string   `json:"deposit"`
	Balance    string   `json:"balance"`
	Cloths     []Bought `json:"cloths"`
	Ended
}

// Line of a quote.
type Line struct {
	Group  string `json:"group"`
	Text   string `json:"text"`
	Amount string `json:"amount,omitempty"`
	Price  string `json:"price,omitempty"`
	Cost   string `json:"cost"`
}

// Tax on the whole of a quote.
type Tax struct {
	Name     string `json:"name"`
	Rate     string `json:"rate"`
	Included bool   `json:"included"`
	Sum      string `json:"sum"`
}

// Bought is a cloth as it is bought. OneByOneMM is what the garments
// would take if each were bought for by itself.
type Bought struct {
	Cloth      string  `json:"cloth"`
	Option     Option  `json:"option"`
	OneByOneMM float64 `json:"one_by_one_mm,omitempty"`
	SavedMM    float64 `json:"saved_mm,omitempty"`
	Saved      string  `json:"saved,omitempty"`
}

// QuoteOf a job.
func QuoteOf(q quote.Quote) Quote {
	money := q.Currency.Plain
	out := Quote{
		Number: q.Number, Job: q.Job, Client: q.Client, Date: q.Date.Format(time.DateOnly), Currency: q.Currency.Code(),
		Subtotal: money(q.Subtotal), Total: money(q.Total), Deposit: money(q.DepositSum), Balance: money(q.Balance),
		Ended: endedOf(q.Ended),
	}
	if !q.ValidUntil.IsZero() {
		out.ValidUntil = q.ValidUntil.Format(time.DateOnly)
	}
	for _, line := range q.Lines {
		out.Lines = append(out.Lines, Line{string(line.Group), line.Text, line.Amount, line.Each, money(line.Cost)})
	}
	if q.Tax != nil {
		out.Tax = &Tax{q.Tax.Name, q.Tax.Rate.String(), q.Tax.Included, money(q.TaxSum)}
	}
	for _, cloth := range q.Cloths {
		report := Bought{Cloth: cloth.Cloth, Option: optionOf(q.Currency, cloth.Option)}
		for _, saving := range q.Together {
			if saving.Cloth == cloth.Cloth {
				report.OneByOneMM, report.SavedMM = tidy(saving.OneByOne), tidy(saving.OneByOne-saving.Together)
				report.Saved = money(saving.Money)
			}
		}
		out.Cloths = append(out.Cloths, report)
	}
	return out
}
