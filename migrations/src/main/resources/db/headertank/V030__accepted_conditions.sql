-- Which conditions of the check the signer accepted: their keys in the stored result, comma-separated.
alter table sign_off add column conditions text not null default '';
