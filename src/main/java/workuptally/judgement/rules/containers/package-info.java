/**
 * Rules about waste containers and what is proposed for them. One class a rule; no rule reads another.
 */
package workuptally.judgement.rules.containers;
